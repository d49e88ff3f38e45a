package curbwatt.engine.study.odds;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.SobolSequenceGenerator;
import org.apache.commons.math3.random.Well19937c;

/**
 * Points in the unit cube of so many dimensions.
 *
 * @param sampling how they are spread
 * @param seed what the random numbers begin with
 * @param dimensions number of dimensions, 1 … 1000
 */
public record UnitPoints(Sampling sampling, long seed, int dimensions) {

    /** Number of independent replicates of a Sobol sequence; enough for a standard error, few enough to stay even. */
    public static final int REPLICATES = 16;

    /** The points in order; those of a replicate lie together. Each coordinate lies in [0, 1). */
    public List<List<Double>> points(int count) {
        RandomGenerator random = new Well19937c(seed);
        List<List<Double>> points = new ArrayList<>(count);
        if (sampling == Sampling.SEEDED) {
            for (int i = 0; i < count; i++) {
                points.add(random(random));
            }
            return points;
        }
        for (int replicate = 0; replicate < REPLICATES; replicate++) {
            List<Double> shift = random(random);
            SobolSequenceGenerator sobol = new SobolSequenceGenerator(dimensions);
            for (int i = 0; i < count / REPLICATES; i++) {
                points.add(shifted(sobol.nextVector(), shift));
            }
        }
        return points;
    }

    private List<Double> random(RandomGenerator random) {
        List<Double> point = new ArrayList<>(dimensions);
        for (int i = 0; i < dimensions; i++) {
            point.add(random.nextDouble());
        }
        return Collections.unmodifiableList(point);
    }

    private static List<Double> shifted(double[] point, List<Double> shift) {
        List<Double> moved = new ArrayList<>(point.length);
        for (int i = 0; i < point.length; i++) {
            double sum = point[i] + shift.get(i);
            moved.add(sum < 1 ? sum : sum - 1);
        }
        return Collections.unmodifiableList(moved);
    }
}
