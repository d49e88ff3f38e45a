package curbwatt.engine.study.odds;

import curbwatt.engine.quantity.Require;
import java.util.Objects;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.RealDistribution;
import org.apache.commons.math3.distribution.TriangularDistribution;
import org.apache.commons.math3.distribution.UniformRealDistribution;

/**
 * How a figure is spread that nobody knows exactly.
 *
 * @param shape its shape
 * @param likeliest most likely value, in {@code unit}; the mean of the whole normal distribution
 * @param sd standard deviation of the whole normal distribution, in {@code unit}; of no effect on other shapes
 * @param from least value, in {@code unit}
 * @param to greatest value, in {@code unit}
 * @param unit unit of all four; empty for a ratio
 */
public record Spread(Shape shape, double likeliest, double sd, double from, double to, String unit) {

    /** Shape of a distribution. */
    public enum Shape {
        /** A bell, cut off at the least and the greatest value. */
        NORMAL,
        /** Every value between the least and the greatest as likely as any other. */
        UNIFORM,
        /** Straight up from the least value to the likeliest, and straight down to the greatest. */
        TRIANGULAR,
        /** Always the likeliest value. */
        FIXED
    }

    /** Refuses bounds that don't rise, a likeliest value outside them, and a normal distribution without width. */
    public Spread {
        Objects.requireNonNull(shape, "shape");
        Objects.requireNonNull(unit, "unit");
        Require.finite("from", from, unit);
        Require.finite("to", to, unit);
        if (shape != Shape.FIXED && from >= to) {
            throw new IllegalArgumentException("from is " + from + "; it must lie below to, " + to);
        }
        if (shape != Shape.UNIFORM) {
            Require.inside("likeliest", likeliest, from, to, unit);
        }
        if (shape == Shape.NORMAL) {
            Require.positive("sd", sd, unit);
        }
    }

    /** Whether it varies at all. */
    public boolean isSpread() {
        return shape != Shape.FIXED;
    }

    /**
     * The value below which a share of all values lies, the distribution cut off at its own bounds and at what is
     * possible.
     *
     * @param share the share, 0 … 1
     * @param possible the values that are possible, in {@code unit}
     * @throws IllegalArgumentException if nothing of it is possible
     */
    public double valueAt(double share, Possible possible) {
        double least = Math.max(from, possible.least());
        double most = Math.min(to, possible.most());
        if (least > most) {
            throw new IllegalArgumentException("spread from " + from + " to " + to + " lies outside what is possible, "
                    + possible.least() + " to " + possible.most());
        }
        if (shape == Shape.FIXED) {
            return Math.max(least, Math.min(most, likeliest));
        }
        RealDistribution whole = distribution();
        double below = whole.cumulativeProbability(least);
        double value = whole.inverseCumulativeProbability(
                Math.min(1, below + share * (whole.cumulativeProbability(most) - below)));
        return Math.max(least, Math.min(most, value));
    }

    private RealDistribution distribution() {
        return switch (shape) {
            case NORMAL -> new NormalDistribution(null, likeliest, sd);
            case TRIANGULAR -> new TriangularDistribution(null, from, likeliest, to);
            default -> new UniformRealDistribution(null, from, to);
        };
    }

    /**
     * The values that a figure can have.
     *
     * @param least the least, in {@code unit}
     * @param most the greatest, in {@code unit}
     * @param unit their unit; empty for a ratio
     */
    public record Possible(double least, double most, String unit) {

        /** Only what both allow. */
        Possible and(double otherLeast, double otherMost) {
            return new Possible(Math.max(least, otherLeast), Math.min(most, otherMost), unit);
        }
    }
}
