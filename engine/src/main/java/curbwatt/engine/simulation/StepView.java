package curbwatt.engine.simulation;

import java.util.Optional;

/** The step being shown to recorders; one object, filled anew for each step. */
final class StepView implements Step {

    private final OperatingPoint start;
    private final OperatingPoint end;
    private final int senseCircuit;
    private final Optional<CutoffState> cutoff;
    double startS;
    double endS;
    double chargeStartFraction;
    double chargeEndFraction;
    double batteryC;
    double readingStartV;
    double readingEndV;

    /**
     * Makes a view.
     *
     * @param senseCircuit place of the circuit at whose far end the first cutoff senses; −1: at the node
     */
    StepView(OperatingPoint start, OperatingPoint end, int senseCircuit, Optional<CutoffState> cutoff) {
        this.start = start;
        this.end = end;
        this.senseCircuit = senseCircuit;
        this.cutoff = cutoff;
    }

    /** Takes the readings of the step that the cutoff has just been shown. */
    void readCutoff() {
        readingStartV = cutoff.map(CutoffState::readingStartV).orElse(start.nodeV);
        readingEndV = cutoff.map(CutoffState::readingEndV).orElse(end.nodeV);
    }

    @Override
    public double startS() {
        return startS;
    }

    @Override
    public double endS() {
        return endS;
    }

    @Override
    public double nodeStartV() {
        return start.nodeV;
    }

    @Override
    public double nodeEndV() {
        return end.nodeV;
    }

    @Override
    public double sensedStartV() {
        return senseCircuit < 0 ? start.nodeV : start.farV[senseCircuit];
    }

    @Override
    public double sensedEndV() {
        return senseCircuit < 0 ? end.nodeV : end.farV[senseCircuit];
    }

    @Override
    public double readingStartV() {
        return readingStartV;
    }

    @Override
    public double readingEndV() {
        return readingEndV;
    }

    @Override
    public double batteryA() {
        return 0.5 * (start.batteryA() + end.batteryA());
    }

    @Override
    public double alternatorA() {
        return 0.5 * (start.alternatorA + end.alternatorA);
    }

    @Override
    public double circuitA(int circuit) {
        return 0.5 * (start.circuitA[circuit] + end.circuitA[circuit]);
    }

    @Override
    public int circuits() {
        return start.circuitA.length;
    }

    @Override
    public double chargeStartFraction() {
        return chargeStartFraction;
    }

    @Override
    public double chargeEndFraction() {
        return chargeEndFraction;
    }

    @Override
    public double batteryC() {
        return batteryC;
    }

    @Override
    public double residualA() {
        return start.residualA;
    }
}
