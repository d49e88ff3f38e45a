package curbwatt.engine.simulation;

import curbwatt.engine.simulation.book.EngineBook;
import curbwatt.engine.simulation.device.CutoffState;
import curbwatt.engine.simulation.network.SenseTap;
import curbwatt.engine.simulation.part.Batteries;
import curbwatt.engine.simulation.part.OperatingPoint;
import curbwatt.engine.simulation.record.Step;
import java.util.List;
import java.util.Optional;

/** The step being shown to recorders; one object, filled anew for each step. */
final class StepView implements Step {

    private final OperatingPoint start;
    private final OperatingPoint end;
    private final Batteries batteries;
    private final List<SenseTap> taps;
    private final Optional<CutoffState> cutoff;
    private final EngineBook engine;
    private double startS;
    private double endS;
    private double chargeStartFraction;
    private double readingStartV;
    private double readingEndV;

    /**
     * Makes a view.
     *
     * @param taps where the cutoffs sense
     * @param cutoff the first of them
     * @param engine what the engine has done so far
     */
    StepView(Stepping stepping, List<SenseTap> taps, Optional<CutoffState> cutoff, EngineBook engine) {
        this.engine = engine;
        start = stepping.start;
        end = stepping.end;
        batteries = stepping.batteries;
        this.taps = taps;
        this.cutoff = cutoff;
    }

    /** Notes what a step starts from. */
    void begin(double timeS) {
        startS = timeS;
        chargeStartFraction = batteries.starter().stateOfChargeFraction();
    }

    /** Notes that the step was taken; the cutoff has been shown it. */
    void end(double timeS) {
        endS = timeS;
        readCutoff();
    }

    private void readCutoff() {
        readingStartV = cutoff.isPresent() ? cutoff.get().readingStartV() : start.starter.nodeV;
        readingEndV = cutoff.isPresent() ? cutoff.get().readingEndV() : end.starter.nodeV;
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
    public int cutoffs() {
        return taps.size();
    }

    @Override
    public double sensedStartV(int cutoff) {
        return taps.get(cutoff).voltageV(start);
    }

    @Override
    public double sensedEndV(int cutoff) {
        return taps.get(cutoff).voltageV(end);
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
    public double loadPeakA() {
        return Math.max(start.loadA(), end.loadA());
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
        return batteries.starter().stateOfChargeFraction();
    }

    @Override
    public double batteryC() {
        return batteries.starter().temperatureC();
    }

    @Override
    public double residualA() {
        return start.residualA();
    }

    @Override
    public double engineRunS() {
        return engine.runS();
    }

    @Override
    public double fuelLitres() {
        return engine.litres();
    }

    @Override
    public boolean hasEquipmentNode() {
        return batteries.areTwo();
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
        return batteries.auxiliary().stateOfChargeFraction();
    }

    @Override
    public double auxiliaryC() {
        return batteries.auxiliary().temperatureC();
    }
}
