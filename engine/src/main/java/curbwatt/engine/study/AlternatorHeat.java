package curbwatt.engine.study;

import curbwatt.engine.alternator.Alternator;
import curbwatt.engine.alternator.HotFactor;
import curbwatt.engine.simulation.Simulation;

/**
 * More, or less, of the alternator's output is left when it is hot.
 *
 * @param factor what the shares that are left are multiplied by; the shares stay within 0.3 … 1.1
 */
public record AlternatorHeat(double factor) implements Variation {

    private static final double LEAST_FRACTION = 0.3;
    private static final double MOST_FRACTION = 1.1;

    @Override
    public Simulation of(Simulation base) {
        return base.with(
                base.vehicle().withAlternator(base.vehicle().alternator().map(this::heated)));
    }

    private Alternator heated(Alternator alternator) {
        HotFactor hot = alternator.hotFactor();
        return new Alternator(
                alternator.output(),
                new HotFactor(left(hot.lowFraction()), left(hot.highFraction())),
                alternator.regulator(),
                alternator.pulleyRatio(),
                alternator.rampS());
    }

    private double left(double share) {
        return Math.max(LEAST_FRACTION, Math.min(MOST_FRACTION, factor * share));
    }
}
