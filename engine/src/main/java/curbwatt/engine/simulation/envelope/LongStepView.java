package curbwatt.engine.simulation.envelope;

import curbwatt.engine.simulation.book.EngineBook;
import curbwatt.engine.simulation.device.CutoffState;
import curbwatt.engine.simulation.network.SenseTap;
import curbwatt.engine.simulation.part.Batteries;
import curbwatt.engine.simulation.part.OperatingPoint;
import curbwatt.engine.simulation.record.Recorder;
import curbwatt.engine.simulation.record.Step;
import java.util.List;
import java.util.Optional;

/** A long step, or a part of one, shown to recorders; one object, filled anew for each part. */
public final class LongStepView implements Step {

    private final Envelope envelope;
    private final Batteries batteries;
    private final List<SenseTap> taps;
    private final Frame frame;
    private final OperatingPoint start;
    private final OperatingPoint end;
    private final OperatingPoint point;
    private final Averages averages;
    private double[] shares = new double[0];
    private double startS;
    private double endS;
    private double chargeStartFraction;
    private final BatteryReadings readings = new BatteryReadings();

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
        this.envelope = envelope;
        this.batteries = batteries;
        this.taps = taps;
        frame = new Frame(cutoff, engine);
        start = new OperatingPoint(circuits);
        end = new OperatingPoint(circuits);
        point = new OperatingPoint(circuits);
        averages = new Averages(circuits, taps);
    }

    /** Notes what holds before a long step is looked for. */
    public void before() {
        frame.before();
    }

    /** Shows the step found to a recorder, in parts as fine as it asks for; before the batteries move. */
    public void show(Recorder recorder, double stepStartS, double stepEndS) {
        frame.after(stepStartS, stepEndS);
        if (shares.length != envelope.step().pattern().size()) {
            shares = new double[envelope.step().pattern().size()];
        }
        double fromS = stepStartS;
        while (fromS < stepEndS) {
            double toS = Math.min(stepEndS, recorder.nextLineS(fromS));
            fill(fromS, toS);
            recorder.record(this);
            fromS = toS;
        }
    }

    private void fill(double fromS, double toS) {
        LongStep step = envelope.step();
        startS = fromS;
        endS = toS;
        step.at(fromS, start);
        step.at(toS - Envelope.BEFORE_EDGE_S, end);
        readings.take(envelope.batteriesAt(frame.share(fromS)));
        chargeStartFraction = readings.charge();
        readings.take(envelope.batteriesAt(frame.share(toS)));
        averages.clear();
        step.pattern().shares(fromS, toS, shares);
        for (int k = 0; k < shares.length; k++) {
            if (shares[k] > 0) {
                // Simpson's rule is exact for a parabola
                note(k, fromS, shares[k] / 6);
                note(k, 0.5 * (fromS + toS), 4 * shares[k] / 6);
                note(k, toS, shares[k] / 6);
            }
        }
    }

    private void note(int combination, double timeS, double weight) {
        envelope.step().at(combination, frame.share(timeS), point);
        averages.add(point, weight);
    }

    @Override
    public boolean isStraight() {
        return false;
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
    public double nodeLowestV() {
        return averages.node.lowestV();
    }

    @Override
    public double nodeHighestV() {
        return averages.node.highestV();
    }

    @Override
    public double nodeMeanV() {
        return averages.mean.starter.nodeV;
    }

    @Override
    public int cutoffs() {
        return taps.size();
    }

    @Override
    public double sensedStartV(int place) {
        return taps.get(place).voltageV(start);
    }

    @Override
    public double sensedEndV(int place) {
        return taps.get(place).voltageV(end);
    }

    @Override
    public double sensedLowestV(int place) {
        return averages.sensed.get(place).lowestV();
    }

    @Override
    public double sensedHighestV(int place) {
        return averages.sensed.get(place).highestV();
    }

    @Override
    public double readingStartV() {
        return frame.reads() ? frame.readingV(startS) : nodeStartV();
    }

    @Override
    public double readingEndV() {
        return frame.reads() ? frame.readingV(endS) : nodeEndV();
    }

    @Override
    public double batteryA() {
        return averages.mean.starter.batteryA();
    }

    @Override
    public double alternatorA() {
        return averages.mean.starter.sourceA;
    }

    @Override
    public double circuitA(int circuit) {
        return averages.mean.circuitA[circuit];
    }

    @Override
    public int circuits() {
        return averages.mean.circuitA.length;
    }

    @Override
    public double chargeStartFraction() {
        return chargeStartFraction;
    }

    @Override
    public double chargeEndFraction() {
        return readings.charge();
    }

    @Override
    public double batteryC() {
        return readings.batteryC();
    }

    @Override
    public double residualA() {
        return averages.residualA();
    }

    @Override
    public double engineRunS() {
        return frame.runS(endS);
    }

    @Override
    public double fuelLitres() {
        return frame.litres(endS);
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
    public double equipmentLowestV() {
        return averages.equipment.lowestV();
    }

    @Override
    public double equipmentHighestV() {
        return averages.equipment.highestV();
    }

    @Override
    public double equipmentMeanV() {
        return averages.mean.equipment.nodeV;
    }

    @Override
    public double auxiliaryA() {
        return averages.mean.equipment.batteryA();
    }

    @Override
    public double linkA() {
        return averages.mean.linkOutA;
    }

    @Override
    public double auxiliaryChargeEndFraction() {
        return readings.auxiliaryCharge();
    }

    @Override
    public double auxiliaryC() {
        return readings.auxiliaryC();
    }

    @Override
    public double dischargedAs() {
        return averages.gaveA() * (endS - startS);
    }

    @Override
    public double chargedAs() {
        return averages.tookA() * (endS - startS);
    }

    @Override
    public double auxiliaryDischargedAs() {
        return averages.auxiliaryGaveA() * (endS - startS);
    }

    @Override
    public double auxiliaryChargedAs() {
        return averages.auxiliaryTookA() * (endS - startS);
    }
}
