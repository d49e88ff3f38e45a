package curbwatt.engine.study.settings;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * What one run says of a setting.
 *
 * @param failures what it fails at, in the order of {@link FailureKind}; empty: it does
 * @param heldS how long the circuits that are to be held were held (s); empty: none are, or there was no run
 * @param restartMarginV room above the minimum cranking voltage at the worst start (V); empty: there was no run
 * @param firstTripS when a cutoff first opened (s); empty: none did
 * @param trips how often cutoffs opened
 */
public record Fate(
        List<Failure> failures,
        OptionalDouble heldS,
        OptionalDouble restartMarginV,
        OptionalDouble firstTripS,
        long trips) {

    /** Copies the list. */
    public Fate {
        failures = List.copyOf(failures);
        Objects.requireNonNull(heldS, "heldS");
        Objects.requireNonNull(restartMarginV, "restartMarginV");
        Objects.requireNonNull(firstTripS, "firstTripS");
    }

    /** Whether everything asked was met. */
    public boolean isMet() {
        return failures.isEmpty();
    }
}
