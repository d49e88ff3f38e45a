package curbwatt.engine.simulation.envelope;

import curbwatt.engine.simulation.book.EngineBook;
import curbwatt.engine.simulation.device.CutoffState;
import curbwatt.engine.simulation.network.SenseTap;
import curbwatt.engine.simulation.part.Batteries;
import curbwatt.engine.simulation.record.Recorder;
import curbwatt.engine.simulation.record.Step;
import java.util.List;
import java.util.Optional;

/** A long step, or a part of one, shown to recorders; one object, filled anew for each part. */
public final class LongStepView implements Step {

    private final Batteries batteries;
    private final List<SenseTap> taps;
    private final Frame frame;
    private final Stretch stretch;

    /**
     * Makes a view.
     *
     * @param taps where the cutoffs sense
     * @param engine what the engine has done so far
     */
    public LongStepView(
            Envelope envelope,
            Batteries batteries,
            int circuits,
            List<SenseTap> taps,
            Optional<CutoffState> cutoff,
            EngineBook engine) {
        this.batteries = batteries;
        this.taps = taps;
        frame = new Frame(cutoff, engine);
        stretch = new Stretch(envelope, circuits, taps);
    }

    /** Notes what holds before a long step is looked for. */
    public void before() {
        frame.before();
    }

    /** Shows the step found to a recorder, in parts as fine as it asks for; before the batteries move. */
    public void show(Recorder recorder, double stepStartS, double stepEndS) {
        frame.after(stepStartS, stepEndS);
        double fromS = stepStartS;
        while (fromS < stepEndS) {
            double toS = Math.min(stepEndS, recorder.nextLineS(fromS));
            stretch.fill(fromS, toS);
            recorder.record(this);
            fromS = toS;
        }
    }

    @Override
    public boolean isStraight() {
        return false;
    }

    @Override
    public double startS() {
        return stretch.startS();
    }

    @Override
    public double endS() {
        return stretch.endS();
    }

    @Override
    public double nodeStartV() {
        return stretch.start.starter.nodeV;
    }

    @Override
    public double nodeEndV() {
        return stretch.end.starter.nodeV;
    }

    @Override
    public double nodeLowestV() {
        return stretch.averages.node.lowestV();
    }

    @Override
    public double nodeHighestV() {
        return stretch.averages.node.highestV();
    }

    @Override
    public double nodeMeanV() {
        return stretch.averages.mean.starter.nodeV;
    }

    @Override
    public int cutoffs() {
        return taps.size();
    }

    @Override
    public double sensedStartV(int place) {
        return taps.get(place).voltageV(stretch.start);
    }

    @Override
    public double sensedEndV(int place) {
        return taps.get(place).voltageV(stretch.end);
    }

    @Override
    public double sensedLowestV(int place) {
        return stretch.averages.sensed.get(place).lowestV();
    }

    @Override
    public double sensedHighestV(int place) {
        return stretch.averages.sensed.get(place).highestV();
    }

    @Override
    public double readingStartV() {
        return frame.reads() ? frame.readingV(stretch.startS()) : nodeStartV();
    }

    @Override
    public double readingEndV() {
        return frame.reads() ? frame.readingV(stretch.endS()) : nodeEndV();
    }

    @Override
    public double batteryA() {
        return stretch.averages.mean.starter.batteryA();
    }

    @Override
    public double alternatorA() {
        return stretch.averages.mean.starter.sourceA;
    }

    @Override
    public double circuitA(int circuit) {
        return stretch.averages.mean.circuitA[circuit];
    }

    @Override
    public int circuits() {
        return stretch.averages.mean.circuitA.length;
    }

    @Override
    public double chargeStartFraction() {
        return stretch.chargeStartFraction();
    }

    @Override
    public double chargeEndFraction() {
        return stretch.readings.charge();
    }

    @Override
    public double batteryC() {
        return stretch.readings.batteryC();
    }

    @Override
    public double residualA() {
        return stretch.averages.residualA();
    }

    @Override
    public double engineRunS() {
        return frame.runS(stretch.endS());
    }

    @Override
    public double fuelLitres() {
        return frame.litres(stretch.endS());
    }

    @Override
    public boolean hasEquipmentNode() {
        return batteries.areTwo();
    }

    @Override
    public double equipmentStartV() {
        return stretch.start.equipment.nodeV;
    }

    @Override
    public double equipmentEndV() {
        return stretch.end.equipment.nodeV;
    }

    @Override
    public double equipmentLowestV() {
        return stretch.averages.equipment.lowestV();
    }

    @Override
    public double equipmentHighestV() {
        return stretch.averages.equipment.highestV();
    }

    @Override
    public double equipmentMeanV() {
        return stretch.averages.mean.equipment.nodeV;
    }

    @Override
    public double auxiliaryA() {
        return stretch.averages.mean.equipment.batteryA();
    }

    @Override
    public double linkA() {
        return stretch.averages.mean.linkOutA;
    }

    @Override
    public double auxiliaryChargeEndFraction() {
        return stretch.readings.auxiliaryCharge();
    }

    @Override
    public double auxiliaryC() {
        return stretch.readings.auxiliaryC();
    }

    @Override
    public double dischargedAs() {
        return stretch.averages.gaveA() * lengthS();
    }

    @Override
    public double chargedAs() {
        return stretch.averages.tookA() * lengthS();
    }

    @Override
    public double auxiliaryDischargedAs() {
        return stretch.averages.auxiliaryGaveA() * lengthS();
    }

    @Override
    public double auxiliaryChargedAs() {
        return stretch.averages.auxiliaryTookA() * lengthS();
    }

    private double lengthS() {
        return stretch.endS() - stretch.startS();
    }

    @Override
    public double loadPeakA() {
        return stretch.averages.loadPeakA();
    }
}
