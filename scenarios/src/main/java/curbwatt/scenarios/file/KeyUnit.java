package curbwatt.scenarios.file;

import java.util.List;
import java.util.Map;

/** The unit that a key of the file ends with: {@code ratedCurrentA} is in A. */
public final class KeyUnit {
    /** Longer endings first, so that {@code Ah} is not taken for hours. */
    private static final List<Map.Entry<String, String>> UNITS = List.of(
            Map.entry("PercentPerMonth", "% per month"),
            Map.entry("LitresPerHour", "L/h"),
            Map.entry("PricePerLitre", "per L"),
            Map.entry("PricePerHour", "per h"),
            Map.entry("PricePerStart", "per start"),
            Map.entry("PerYear", "per year"),
            Map.entry("Years", "years"),
            Map.entry("Price", "in money"),
            Map.entry("MvPerK", "mV/K"),
            Map.entry("Milliohm", "mΩ"),
            Map.entry("Percent", "%"),
            Map.entry("Mm2", "mm²"),
            Map.entry("Rpm", "/min"),
            Map.entry("Min", "min"),
            Map.entry("Ah", "Ah"),
            Map.entry("Ms", "ms"),
            Map.entry("A", "A"),
            Map.entry("V", "V"),
            Map.entry("S", "s"),
            Map.entry("H", "h"),
            Map.entry("M", "m"),
            Map.entry("K", "K"),
            Map.entry("C", "°C"));

    private KeyUnit() {}

    /**
     * Returns the unit of the number at a place; empty if it has none. Entries of a list have the unit of their key.
     */
    public static String of(Place place) {
        String key = place.name();
        if (!key.isEmpty() && key.chars().allMatch(Character::isDigit)) {
            return of(place.parent());
        }
        return UNITS.stream()
                .filter(unit -> key.endsWith(unit.getKey()))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse("");
    }
}
