package curbwatt.engine.verdict;

import java.util.OptionalDouble;

/**
 * A requirement with the figure that decides it.
 *
 * @param requirement what was asked
 * @param met whether it was met
 * @param figure what came out, in {@code unit}
 * @param limit what was asked, in {@code unit}
 * @param unit unit of figure and limit: {@code min}, {@code V}, {@code trips} or {@code 1} for a share
 * @param cause what decided it: cutoff, circuit, load or phase; empty: nothing went wrong
 * @param atS when it was decided (s); empty: no single instant
 */
public record Finding(
        Requirement requirement,
        boolean met,
        double figure,
        double limit,
        String unit,
        String cause,
        OptionalDouble atS) {}
