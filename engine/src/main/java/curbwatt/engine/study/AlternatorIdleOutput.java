package curbwatt.engine.study;

import curbwatt.engine.alternator.Alternator;
import curbwatt.engine.alternator.AlternatorLabel;
import curbwatt.engine.alternator.MeasuredOutputCurve;
import curbwatt.engine.alternator.OutputCurve;
import curbwatt.engine.alternator.ReactanceOutputCurve;
import curbwatt.engine.simulation.Simulation;
import java.util.ArrayList;
import java.util.List;

/**
 * The alternator's label promises more, or less, at its low speed; its output at high speed stays.
 *
 * <p>Of a curve through a label, the output at 1500 /min of the shaft is multiplied, and the curve laid anew through it
 * and the output at 6000 /min. Of a bench table, the first point is multiplied, the last stays, and what is between is
 * multiplied in between. An output never rises above that at high speed.
 *
 * @param factor what the output at low speed is multiplied by, above 0
 */
public record AlternatorIdleOutput(double factor) implements Variation {

    /** The output at low speed stays below this share of that at high speed. */
    private static final double MOST_FRACTION = 0.98;

    /** A machine that gives nothing at 1500 /min is taken at so many times its cut-in speed. */
    private static final double ABOVE_CUT_IN_FACTOR = 1.2;

    @Override
    public Simulation of(Simulation base) {
        return base.with(
                base.vehicle().withAlternator(base.vehicle().alternator().map(this::relabelled)));
    }

    private Alternator relabelled(Alternator alternator) {
        return new Alternator(
                output(alternator.output()),
                alternator.hotFactor(),
                alternator.regulator(),
                alternator.pulleyRatio(),
                alternator.rampS());
    }

    private OutputCurve output(OutputCurve curve) {
        if (factor == 1) {
            return curve;
        }
        if (curve instanceof MeasuredOutputCurve table) {
            return new MeasuredOutputCurve(multiplied(table.points()));
        }
        double ratedA = curve.maximumA(AlternatorLabel.RATED_RPM);
        double lowRpm = Math.max(AlternatorLabel.IDLE_RPM, ABOVE_CUT_IN_FACTOR * curve.cutInRpm());
        double lowA = Math.min(MOST_FRACTION * ratedA, factor * curve.maximumA(lowRpm));
        return ReactanceOutputCurve.through(new AlternatorLabel(lowA, lowRpm, ratedA, AlternatorLabel.RATED_RPM));
    }

    private List<MeasuredOutputCurve.Point> multiplied(List<MeasuredOutputCurve.Point> points) {
        double firstRpm = points.get(0).shaftRpm();
        double lastRpm = points.get(points.size() - 1).shaftRpm();
        double mostA = points.get(points.size() - 1).outputA();
        List<MeasuredOutputCurve.Point> result = new ArrayList<>();
        double leastA = 0;
        for (MeasuredOutputCurve.Point point : points) {
            double share = (point.shaftRpm() - firstRpm) / (lastRpm - firstRpm);
            double wishedA = point.outputA() * (factor + share * (1 - factor));
            leastA = Math.max(leastA, Math.min(mostA, wishedA));
            result.add(new MeasuredOutputCurve.Point(point.shaftRpm(), leastA));
        }
        return result;
    }
}
