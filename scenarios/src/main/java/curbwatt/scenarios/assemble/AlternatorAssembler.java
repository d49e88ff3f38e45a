package curbwatt.scenarios.assemble;

import curbwatt.engine.alternator.Alternator;
import curbwatt.engine.alternator.AlternatorLabel;
import curbwatt.engine.alternator.HotFactor;
import curbwatt.engine.alternator.MeasuredOutputCurve;
import curbwatt.engine.alternator.OutputCurve;
import curbwatt.engine.alternator.ReactanceOutputCurve;
import curbwatt.engine.alternator.VoltageRegulator;
import curbwatt.scenarios.file.AlternatorEntry;

/**
 * From the figures of a label or table to an alternator.
 *
 * @param guarded catches what the engine refuses
 * @param assumptions told of what is taken although the file does not say it
 */
record AlternatorAssembler(Guarded guarded, Assumptions assumptions) {
    private static final double USUAL_SET_POINT_V = 14.2;
    private static final double USUAL_PULLEY_RATIO = 2.5;
    private static final double USUAL_RAMP_S = 5;
    private static final double VOLT_PER_MILLIVOLT = 1e-3;

    /** Returns the alternator. */
    Alternator alternator(AlternatorEntry entry) {
        if (entry.pulleyRatio().isEmpty()) {
            assumptions.add("The alternator is taken to turn 2.5 times for one turn of the engine.");
        }
        if (entry.hotFactorLow().isEmpty() || entry.hotFactorHigh().isEmpty()) {
            assumptions.add(
                    "The alternator is taken to lose output when hot as the one published machine did: 0.67 is left"
                            + " near idle, 0.82 at speed.");
        }
        if (entry.setPointV().isEmpty()) {
            assumptions.add("The regulator is taken to hold 14.2 V at 25 °C.");
        }
        HotFactor published = HotFactor.published();
        return guarded.build(
                entry.place(),
                () -> new Alternator(
                        output(entry),
                        new HotFactor(
                                entry.hotFactorLow().orElse(published.lowFraction()),
                                entry.hotFactorHigh().orElse(published.highFraction())),
                        regulator(entry),
                        entry.pulleyRatio().orElse(USUAL_PULLEY_RATIO),
                        entry.rampS().orElse(USUAL_RAMP_S)));
    }

    private static OutputCurve output(AlternatorEntry entry) {
        if (!entry.table().isEmpty()) {
            return new MeasuredOutputCurve(entry.table().stream()
                    .map(point -> new MeasuredOutputCurve.Point(
                            point.shaftRpm().orElseThrow(), point.outputA().orElseThrow()))
                    .toList());
        }
        return ReactanceOutputCurve.through(new AlternatorLabel(
                entry.idleA().orElseThrow(),
                entry.idleRpm().orElse(AlternatorLabel.IDLE_RPM),
                entry.ratedA().orElseThrow(),
                entry.ratedRpm().orElse(AlternatorLabel.RATED_RPM)));
    }

    private static VoltageRegulator regulator(AlternatorEntry entry) {
        VoltageRegulator usual = VoltageRegulator.usual(entry.setPointV().orElse(USUAL_SET_POINT_V));
        return new VoltageRegulator(
                usual.at25V(),
                entry.setPointSlopeMvPerK()
                        .map(slope -> slope * VOLT_PER_MILLIVOLT)
                        .orElse(usual.slopeVPerK()),
                entry.lowestSetPointV().orElse(usual.lowestV()),
                entry.highestSetPointV().orElse(usual.highestV()));
    }
}
