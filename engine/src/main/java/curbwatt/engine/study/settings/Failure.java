package curbwatt.engine.study.settings;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * One thing that a setting fails at.
 *
 * @param kind what it is
 * @param subject cutoff, load, phase or circuit that it is about; may be empty
 * @param missing by how much it misses what was asked, in {@code unit}, 0 or above; infinity: the engine can't be
 *     cranked
 * @param unit {@code min}, {@code V}, {@code trips}, {@code 1} for a share of the charge, or empty
 * @param atS when (s); empty: no single instant
 */
public record Failure(FailureKind kind, String subject, double missing, String unit, OptionalDouble atS) {

    /** Refuses missing parts. */
    public Failure {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(subject, "subject");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(atS, "atS");
    }
}
