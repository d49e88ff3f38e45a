package curbwatt.engine.study.size;

import curbwatt.engine.verdict.Finding;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The smallest battery that meets everything asked, and why not a smaller one.
 *
 * @param holdsAh 20 h capacity of the smallest battery found that does (Ah); empty: none does, however large
 * @param failsAh 20 h capacity of the largest battery below it that was tried and does not (Ah); empty: even the
 *     smallest does
 * @param failure what that one fails first; for a need that no battery meets, what the largest fails
 */
public record Need(OptionalDouble holdsAh, OptionalDouble failsAh, Optional<Finding> failure) {

    /** Refuses missing parts. */
    public Need {
        Objects.requireNonNull(holdsAh, "holdsAh");
        Objects.requireNonNull(failsAh, "failsAh");
        Objects.requireNonNull(failure, "failure");
    }
}
