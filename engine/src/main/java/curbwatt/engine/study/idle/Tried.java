package curbwatt.engine.study.idle;

import java.util.Objects;

/**
 * All ways with one lever moved.
 *
 * @param lever the lever
 * @param factor its value as a multiple of the present one
 * @param outcome what came out
 */
public record Tried(Lever lever, double factor, IdleCase outcome) {

    /** Refuses missing parts. */
    public Tried {
        Objects.requireNonNull(lever, "lever");
        Objects.requireNonNull(outcome, "outcome");
    }
}
