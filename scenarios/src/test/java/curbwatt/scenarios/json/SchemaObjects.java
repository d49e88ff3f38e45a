package curbwatt.scenarios.json;

import java.util.Map;
import java.util.TreeMap;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** The objects of the schema by name, for tests that hold something against it. */
public final class SchemaObjects {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private SchemaObjects() {}

    /** Returns the schema objects that have keys; the top one is called {@code scenario}. */
    public static Map<String, JsonNode> all() {
        JsonNode schema = MAPPER.readTree(ScenarioReader.schemaText());
        Map<String, JsonNode> objects = new TreeMap<>();
        objects.put("scenario", schema);
        schema.path("$defs").properties().stream()
                .filter(definition -> definition.getValue().has("properties"))
                .forEach(definition -> objects.put(definition.getKey(), definition.getValue()));
        return objects;
    }

    /** Returns a key's schema, with what it refers to laid under it. */
    public static JsonNode resolved(JsonNode key) {
        JsonNode schema = MAPPER.readTree(ScenarioReader.schemaText());
        String reference = key.path("$ref").stringValue("");
        if (reference.isEmpty()) {
            return key;
        }
        var target = (tools.jackson.databind.node.ObjectNode)
                schema.at(reference.substring(1)).deepCopy();
        key.properties().forEach(entry -> target.set(entry.getKey(), entry.getValue()));
        target.remove("$ref");
        return target;
    }
}
