package curbwatt.engine.simulation.record;

/**
 * A read-only view of the step just accepted.
 *
 * <p>In a short step voltages run straight between start and end. A long step has many flashes in it: start and end are
 * instants of the waveform, and lowest, highest and mean say what it does between.
 */
public interface Step {

    /** Start, since the scene's start (s). */
    double startS();

    /** End, since the scene's start (s). */
    double endS();

    /** Voltage of the starter node at the start, after whatever switched there (V). */
    double nodeStartV();

    /** Voltage of the starter node at the end, before whatever switches there (V). */
    double nodeEndV();

    /** Whether voltages run straight between start and end. */
    default boolean isStraight() {
        return true;
    }

    /** Lowest voltage of the starter node in the step (V). */
    default double nodeLowestV() {
        return Math.min(nodeStartV(), nodeEndV());
    }

    /** Highest voltage of the starter node in the step (V). */
    default double nodeHighestV() {
        return Math.max(nodeStartV(), nodeEndV());
    }

    /** Mean voltage of the starter node in the step (V). */
    default double nodeMeanV() {
        return 0.5 * (nodeStartV() + nodeEndV());
    }

    /** Voltage at the first cutoff's sense point at the start; the node voltage if there is no cutoff (V). */
    default double sensedStartV() {
        return cutoffs() == 0 ? nodeStartV() : sensedStartV(0);
    }

    /** Voltage at the first cutoff's sense point at the end (V). */
    default double sensedEndV() {
        return cutoffs() == 0 ? nodeEndV() : sensedEndV(0);
    }

    /** Number of cutoffs. */
    int cutoffs();

    /** Voltage at a cutoff's sense point at the start, by its place in the vehicle (V). */
    double sensedStartV(int cutoff);

    /** Voltage at a cutoff's sense point at the end, by its place in the vehicle (V). */
    double sensedEndV(int cutoff);

    /** Lowest voltage at a cutoff's sense point in the step (V). */
    default double sensedLowestV(int cutoff) {
        return Math.min(sensedStartV(cutoff), sensedEndV(cutoff));
    }

    /** Highest voltage at a cutoff's sense point in the step (V). */
    default double sensedHighestV(int cutoff) {
        return Math.max(sensedStartV(cutoff), sensedEndV(cutoff));
    }

    /** First cutoff's reading at the start, after sensor error and filter (V). */
    double readingStartV();

    /** First cutoff's reading at the end, after sensor error and filter (V). */
    double readingEndV();

    /** Mean current of the starter battery in the step, discharging counts positive (A). */
    double batteryA();

    /** Charge that the starter battery gave in the step, leaving aside what it took (A·s). */
    default double dischargedAs() {
        return Math.max(0, batteryA()) * (endS() - startS());
    }

    /** Charge that the starter battery took in the step, leaving aside what it gave (A·s). */
    default double chargedAs() {
        return Math.max(0, -batteryA()) * (endS() - startS());
    }

    /** Mean alternator current in the step (A). */
    double alternatorA();

    /** Mean current of a circuit in the step, by its place in the vehicle (A). */
    double circuitA(int circuit);

    /** Largest current of all circuits together in the step (A). */
    double loadPeakA();

    /** Number of circuits. */
    int circuits();

    /** State of charge at the start. */
    double chargeStartFraction();

    /** State of charge at the end. */
    double chargeEndFraction();

    /** Battery temperature at the end (°C). */
    double batteryC();

    /** Residual of Kirchhoff's current law at the start, of the node where it is larger (A). */
    double residualA();

    /** Time in which the engine ran, from the scene's start to the step's end (s). */
    double engineRunS();

    /** Fuel taken from the scene's start to the step's end (L); 0 if it is not known. */
    double fuelLitres();

    /** Whether there is an equipment node; the figures below are meaningless without. */
    boolean hasEquipmentNode();

    /** Voltage of the equipment node at the start (V). */
    double equipmentStartV();

    /** Voltage of the equipment node at the end (V). */
    double equipmentEndV();

    /** Lowest voltage of the equipment node in the step (V). */
    default double equipmentLowestV() {
        return Math.min(equipmentStartV(), equipmentEndV());
    }

    /** Highest voltage of the equipment node in the step (V). */
    default double equipmentHighestV() {
        return Math.max(equipmentStartV(), equipmentEndV());
    }

    /** Mean voltage of the equipment node in the step (V). */
    default double equipmentMeanV() {
        return 0.5 * (equipmentStartV() + equipmentEndV());
    }

    /** Mean current of the auxiliary battery in the step, discharging counts positive (A). */
    double auxiliaryA();

    /** Charge that the auxiliary battery gave in the step, leaving aside what it took (A·s). */
    default double auxiliaryDischargedAs() {
        return Math.max(0, auxiliaryA()) * (endS() - startS());
    }

    /** Charge that the auxiliary battery took in the step, leaving aside what it gave (A·s). */
    default double auxiliaryChargedAs() {
        return Math.max(0, -auxiliaryA()) * (endS() - startS());
    }

    /** Mean current that reaches the equipment node through the link in the step (A). */
    double linkA();

    /** State of charge of the auxiliary battery at the end. */
    double auxiliaryChargeEndFraction();

    /** Temperature of the auxiliary battery at the end (°C). */
    double auxiliaryC();
}
