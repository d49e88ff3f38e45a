package curbwatt.engine.study.size;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.random.HaltonSequenceGenerator;
import org.apache.commons.math3.special.Erf;

/** Conditions scattered about the stated ones, evenly rather than by chance: a Halton sequence, always the same. */
final class Draws {

    private static final int DIMENSIONS = 3;
    private static final double LEAST_HEALTH = 0.05;
    private static final double MOST_HEALTH = 1.2;
    private static final double COLDEST_C = -40;
    private static final double HOTTEST_C = 70;

    private Draws() {}

    /** As many draws as the plan says. */
    static List<Conditions> of(Conditions stated, SizePlan plan) {
        HaltonSequenceGenerator halton = new HaltonSequenceGenerator(DIMENSIONS);
        // the sequence begins at a corner of the cube, which no normal law reaches
        halton.skipTo(1);
        List<Conditions> draws = new ArrayList<>();
        for (int i = 0; i < plan.draws(); i++) {
            draws.add(drawn(stated, plan.spread(), halton.nextVector()));
        }
        return List.copyOf(draws);
    }

    private static Conditions drawn(Conditions stated, Spread spread, double[] place) {
        return new Conditions(
                stated.seat(),
                inside(
                        stated.capacityHealthFraction() + spread.capacityFraction() * normal(place[0]),
                        LEAST_HEALTH,
                        MOST_HEALTH),
                stated.resistanceGrowthFactor(),
                inside(stated.batteryC() + spread.temperatureK() * normal(place[1]), COLDEST_C, HOTTEST_C),
                Math.max(0, stated.loadFactor() + spread.loadFraction() * normal(place[2])));
    }

    /** The standard normal's quantile. */
    private static double normal(double share) {
        return Math.sqrt(2) * Erf.erfInv(2 * share - 1);
    }

    private static double inside(double value, double least, double most) {
        return Math.max(least, Math.min(most, value));
    }
}
