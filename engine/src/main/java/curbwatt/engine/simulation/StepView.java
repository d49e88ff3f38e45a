package curbwatt.engine.simulation;

import java.util.Optional;

/** The step being shown to recorders; one object, filled anew for each step. */
final class StepView implements Step {

    private final OperatingPoint start;
    private final OperatingPoint end;
    private final SenseTap tap;
    private final boolean two;
    private final Optional<CutoffState> cutoff;
    double startS;
    double endS;
    double chargeStartFraction;
    double chargeEndFraction;
    double batteryC;
    double auxiliaryChargeEndFraction;
    double auxiliaryC;
    double readingStartV;
    double readingEndV;

    /**
     * Makes a view.
     *
     * @param tap where the first cutoff senses
     * @param two whether there is an equipment node
     */
    StepView(OperatingPoint start, OperatingPoint end, SenseTap tap, boolean two, Optional<CutoffState> cutoff) {
        this.start = start;
        this.end = end;
        this.tap = tap;
        this.two = two;
        this.cutoff = cutoff;
    }

    /** Takes the readings of the step that the cutoff has just been shown. */
    void readCutoff() {
        readingStartV = cutoff.map(CutoffState::readingStartV).orElse(start.starter.nodeV);
        readingEndV = cutoff.map(CutoffState::readingEndV).orElse(end.starter.nodeV);
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
        return start.starter.nodeV;
    }

    @Override
    public double nodeEndV() {
        return end.starter.nodeV;
    }

    @Override
    public double sensedStartV() {
        return tap.voltageV(start);
    }

    @Override
    public double sensedEndV() {
        return tap.voltageV(end);
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
        return 0.5 * (start.starter.batteryA() + end.starter.batteryA());
    }

    @Override
    public double alternatorA() {
        return 0.5 * (start.starter.sourceA + end.starter.sourceA);
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
        return start.residualA();
    }

    @Override
    public boolean hasEquipmentNode() {
        return two;
    }

    @Override
    public double equipmentStartV() {
        return start.equipment.nodeV;
    }

    @Override
    public double equipmentEndV() {
        return end.equipment.nodeV;
    }

    @Override
    public double auxiliaryA() {
        return 0.5 * (start.equipment.batteryA() + end.equipment.batteryA());
    }

    @Override
    public double linkA() {
        return 0.5 * (start.linkOutA + end.linkOutA);
    }

    @Override
    public double auxiliaryChargeEndFraction() {
        return auxiliaryChargeEndFraction;
    }

    @Override
    public double auxiliaryC() {
        return auxiliaryC;
    }
}
