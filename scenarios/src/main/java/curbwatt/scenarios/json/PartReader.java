package curbwatt.scenarios.json;

import curbwatt.scenarios.file.AlternatorEntry;
import curbwatt.scenarios.file.BatteryEntry;
import curbwatt.scenarios.file.LinkEntry;
import curbwatt.scenarios.file.LoadEntry;
import curbwatt.scenarios.file.Part;
import curbwatt.scenarios.file.PartKind;
import curbwatt.scenarios.file.Place;
import curbwatt.scenarios.file.StarterEntry;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/** Reads the catalogue, whose parts have their figures in the scenario's own keys. */
public final class PartReader {
    /**
     * Returns the parts of a list, in order.
     *
     * @param kind what they all are
     * @param text a JSON list of parts: name, title, source, and the figures under the kind's word
     */
    public List<Part> read(PartKind kind, String text) {
        List<Part> parts = new ArrayList<>();
        for (JsonNode node : Json.MAPPER.readTree(text)) {
            JsonNode figures = node.get(kind.toString());
            Map<String, String> texts = texts(figures);
            ScenarioReader.markPlaces(figures, Place.ROOT);
            parts.add(new Part(
                    node.get("name").stringValue(),
                    kind,
                    node.get("title").stringValue(),
                    node.get("source").stringValue(),
                    texts,
                    entry(kind == PartKind.BATTERY, figures, BatteryEntry.class),
                    entry(kind == PartKind.ALTERNATOR, figures, AlternatorEntry.class),
                    entry(kind == PartKind.LOAD, figures, LoadEntry.class),
                    entry(kind == PartKind.STARTER, figures, StarterEntry.class),
                    entry(kind == PartKind.LINK, figures, LinkEntry.class)));
        }
        return parts;
    }

    private static <T> Optional<T> entry(boolean wanted, JsonNode figures, Class<T> type) {
        return wanted ? Optional.of(Json.MAPPER.treeToValue(figures, type)) : Optional.empty();
    }

    private static Map<String, String> texts(JsonNode figures) {
        Map<String, String> texts = new LinkedHashMap<>();
        figures.properties()
                .forEach(figure -> texts.put(
                        figure.getKey(),
                        figure.getValue().isString()
                                ? figure.getValue().stringValue()
                                : figure.getValue().toString()));
        return texts;
    }
}
