package curbwatt.scenarios.file;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A generic part of the catalogue.
 *
 * @param name by which a scenario names it
 * @param kind what it is
 * @param title one line on what it is
 * @param source where its figures come from
 * @param figures its figures, by the scenario's keys, in order, as text
 * @param battery the same figures, if it is a battery
 * @param alternator the same figures, if it is an alternator
 * @param load the same figures, if it is a load
 * @param starter the same figures, if it is a starter
 * @param link the same figures, if it is a link
 */
public record Part(
        String name,
        PartKind kind,
        String title,
        String source,
        Map<String, String> figures,
        Optional<BatteryEntry> battery,
        Optional<AlternatorEntry> alternator,
        Optional<LoadEntry> load,
        Optional<StarterEntry> starter,
        Optional<LinkEntry> link) {

    /** Copies the figures, in their order. */
    public Part {
        figures = Collections.unmodifiableMap(new LinkedHashMap<>(figures));
    }

    /** Returns the part for a reader: name and title, then figures, then source. */
    @Override
    public String toString() {
        String list = figures.entrySet().stream()
                .map(figure -> figure.getKey() + " " + figure.getValue())
                .collect(Collectors.joining(", "));
        return name + ": " + title + "\n  " + list + "\n  Source: " + source + "\n";
    }
}
