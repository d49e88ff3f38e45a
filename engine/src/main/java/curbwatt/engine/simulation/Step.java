package curbwatt.engine.simulation;

/** A read-only view of the step just accepted; voltages run straight between start and end. */
public interface Step {

    /** Start, since the scene's start (s). */
    double startS();

    /** End, since the scene's start (s). */
    double endS();

    /** Node voltage at the start, after whatever switched there (V). */
    double nodeStartV();

    /** Node voltage at the end, before whatever switches there (V). */
    double nodeEndV();

    /** Voltage at the first cutoff's sense point at the start; the node voltage if there is no cutoff (V). */
    double sensedStartV();

    /** Voltage at the first cutoff's sense point at the end (V). */
    double sensedEndV();

    /** First cutoff's reading at the start, after sensor error and filter (V). */
    double readingStartV();

    /** First cutoff's reading at the end, after sensor error and filter (V). */
    double readingEndV();

    /** Mean battery current in the step, discharging counts positive (A). */
    double batteryA();

    /** Mean alternator current in the step (A). */
    double alternatorA();

    /** Mean current of a circuit in the step, by its place in the vehicle (A). */
    double circuitA(int circuit);

    /** Number of circuits. */
    int circuits();

    /** State of charge at the start. */
    double chargeStartFraction();

    /** State of charge at the end. */
    double chargeEndFraction();

    /** Battery temperature at the end (°C). */
    double batteryC();

    /** Residual of Kirchhoff's current law at the start (A). */
    double residualA();
}
