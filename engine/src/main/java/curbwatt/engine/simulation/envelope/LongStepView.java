package curbwatt.engine.simulation.envelope;

import curbwatt.engine.simulation.book.EngineBook;
import curbwatt.engine.simulation.device.CutoffState;
import curbwatt.engine.simulation.network.SenseTap;
import curbwatt.engine.simulation.part.Batteries;
import curbwatt.engine.simulation.part.OperatingPoint;
import curbwatt.engine.simulation.record.Recorder;
import curbwatt.engine.simulation.record.Step;
import java.util.Optional;

/** A long step, or a part of one, shown to recorders; one object, filled anew for each part. */
public final class LongStepView implements Step {

    private final Envelope envelope;
    private final Batteries batteries;
    private final SenseTap tap;
    private final Optional<CutoffState> cutoff;
    private final EngineBook engine;
    private final OperatingPoint start;
    private final OperatingPoint end;
    private final OperatingPoint point;
    private final Averages averages;
    private double[] shares = new double[0];
    private double startS;
    private double endS;
    private double chargeStartFraction;
    private double chargeEndFraction;
    private double auxiliaryChargeEndFraction;
    private double batteryC;
    private double auxiliaryC;
    private double wholeStartS;
    private double wholeS;
    private double readingBeforeV;
    private double readingAfterV;
    private double runBeforeS;
    private double litresBefore;

    /**
     * Makes a view.
     *
     * @param tap where the first cutoff senses
     * @param engine what the engine has done so far
     */
    public LongStepView(
            Envelope envelope,
            Batteries batteries,
            int circuits,
            SenseTap tap,
            Optional<CutoffState> cutoff,
            EngineBook engine) {
        this.envelope = envelope;
        this.batteries = batteries;
        this.tap = tap;
        this.cutoff = cutoff;
        this.engine = engine;
        start = new OperatingPoint(circuits);
        end = new OperatingPoint(circuits);
        point = new OperatingPoint(circuits);
        averages = new Averages(circuits, tap);
    }

    /** Notes what holds before a long step is looked for. */
    public void before() {
        runBeforeS = engine.runS();
        litresBefore = engine.litres();
        readingBeforeV = cutoff.isPresent() ? cutoff.get().filteredV() : Double.NaN;
    }

    /** Shows the step found to a recorder, in parts as fine as it asks for; before the batteries move. */
    public void show(Recorder recorder, double stepStartS, double stepEndS) {
        wholeStartS = stepStartS;
        wholeS = stepEndS - stepStartS;
        readingAfterV = cutoff.isPresent() ? cutoff.get().filteredV() : Double.NaN;
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

    private double share(double timeS) {
        return (timeS - wholeStartS) / wholeS;
    }

    private void fill(double fromS, double toS) {
        LongStep step = envelope.step();
        startS = fromS;
        endS = toS;
        step.at(fromS, start);
        step.at(toS - Envelope.BEFORE_EDGE_S, end);
        readCharge(envelope.batteriesAt(share(fromS)));
        chargeStartFraction = chargeEndFraction;
        readCharge(envelope.batteriesAt(share(toS)));
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

    private void readCharge(Batteries at) {
        chargeEndFraction = at.starter().stateOfChargeFraction();
        batteryC = at.starter().temperatureC();
        if (batteries.areTwo()) {
            auxiliaryChargeEndFraction = at.auxiliary().stateOfChargeFraction();
            auxiliaryC = at.auxiliary().temperatureC();
        }
    }

    private void note(int combination, double timeS, double weight) {
        envelope.step().at(combination, share(timeS), point);
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
    public double sensedStartV() {
        return tap.voltageV(start);
    }

    @Override
    public double sensedEndV() {
        return tap.voltageV(end);
    }

    @Override
    public double sensedLowestV() {
        return averages.sensed.lowestV();
    }

    @Override
    public double sensedHighestV() {
        return averages.sensed.highestV();
    }

    @Override
    public double readingStartV() {
        return cutoff.isEmpty() ? nodeStartV() : readingV(startS);
    }

    @Override
    public double readingEndV() {
        return cutoff.isEmpty() ? nodeEndV() : readingV(endS);
    }

    /** A filtered reading on the straight line between those at the whole step's ends (V). */
    private double readingV(double timeS) {
        double fromV = Double.isNaN(readingBeforeV) ? readingAfterV : readingBeforeV;
        return fromV + share(timeS) * (readingAfterV - fromV);
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
        return chargeEndFraction;
    }

    @Override
    public double batteryC() {
        return batteryC;
    }

    @Override
    public double residualA() {
        return averages.residualA();
    }

    @Override
    public double engineRunS() {
        return runBeforeS + share(endS) * (engine.runS() - runBeforeS);
    }

    @Override
    public double fuelLitres() {
        return litresBefore + share(endS) * (engine.litres() - litresBefore);
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
        return auxiliaryChargeEndFraction;
    }

    @Override
    public double auxiliaryC() {
        return auxiliaryC;
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
