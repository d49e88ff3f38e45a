package curbwatt.engine.study.idle;

import java.util.Objects;
import java.util.Optional;

/**
 * Where the answer changes.
 *
 * @param lever what changes it
 * @param factor the value at which it does, as a multiple of the present one
 * @param to what is best beyond; empty: nothing serves
 */
public record Flip(Lever lever, double factor, Optional<IdleWay> to) {

    /** Refuses missing parts. */
    public Flip {
        Objects.requireNonNull(lever, "lever");
        Objects.requireNonNull(to, "to");
    }
}
