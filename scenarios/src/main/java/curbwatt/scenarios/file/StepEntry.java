package curbwatt.scenarios.file;

import java.util.List;
import java.util.Optional;

/**
 * Circuits that go before the rest.
 *
 * @param place where it stands
 * @param name as the user calls it
 * @param tripV level (V)
 * @param tripDelayS time below it before the step opens (s)
 * @param reclose what closes it again
 * @param disconnects circuits that it disconnects
 */
public record StepEntry(
        Place place,
        Optional<String> name,
        Optional<Double> tripV,
        Optional<Double> tripDelayS,
        Optional<RecloseEntry> reclose,
        List<String> disconnects)
        implements ShedsCircuits {

    /** Takes missing lists as empty ones. */
    public StepEntry {
        disconnects = disconnects == null ? List.of() : List.copyOf(disconnects);
    }
}
