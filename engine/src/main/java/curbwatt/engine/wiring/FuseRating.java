package curbwatt.engine.wiring;

import curbwatt.engine.quantity.Require;
import java.util.Objects;
import java.util.Optional;

/**
 * A fuse as it is printed.
 *
 * @param type make
 * @param ratedA rated current, A, 0.5 to 500; need not be one that is sold
 */
public record FuseRating(FuseType type, double ratedA) {
    /** Drop at the rating that DIN 72581-3 allows most sizes, V; a data sheet has 0.075 to 0.096 V at 40 A. */
    private static final double DROP_AT_RATING_V = 0.1;

    /** Refuses impossible values. */
    public FuseRating {
        Objects.requireNonNull(type, "type");
        Require.inside("ratedA", ratedA, 0.5, 500, "A");
    }

    /** Returns the resistance that a warm fuse has at most, Ω. */
    public double resistanceOhm() {
        return DROP_AT_RATING_V / ratedA;
    }

    /** Returns the smallest fuse sold that is rated for a current, A, or more; empty above the largest of this type. */
    public static Optional<FuseRating> atLeast(FuseType type, double currentA) {
        return type.ratingsA().stream()
                .filter(ratingA -> ratingA >= currentA)
                .findFirst()
                .map(ratingA -> new FuseRating(type, ratingA));
    }
}
