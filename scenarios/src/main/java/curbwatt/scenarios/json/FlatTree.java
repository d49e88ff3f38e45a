package curbwatt.scenarios.json;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;

/**
 * A document as a list of values by path, so that two documents can be laid side by side. Paths are spelt as settings
 * spell them; an entry of a list goes by its name where all entries have one, else by its place. A list of plain values
 * is one value.
 */
final class FlatTree {
    private final Map<String, String> values = new LinkedHashMap<>();

    private FlatTree() {}

    /** The values of a document, in its order. */
    static Map<String, String> of(JsonNode root) {
        FlatTree flat = new FlatTree();
        flat.add("", root);
        return Collections.unmodifiableMap(flat.values);
    }

    private void add(String path, JsonNode node) {
        if (node.isObject() && !node.isEmpty()) {
            for (String key : node.propertyNames()) {
                add(path.isEmpty() ? key : path + "." + key, node.get(key));
            }
        } else if (node instanceof ArrayNode list && holdsObjects(list)) {
            boolean named = areNamed(list);
            for (int i = 0; i < list.size(); i++) {
                add(
                        path + "[" + (named ? list.get(i).get("name").stringValue() : Integer.toString(i)) + "]",
                        list.get(i));
            }
        } else {
            values.put(path, node.isString() ? node.stringValue() : node.toString());
        }
    }

    private static boolean holdsObjects(ArrayNode list) {
        for (JsonNode entry : list) {
            if (entry.isObject()) {
                return true;
            }
        }
        return false;
    }

    private static boolean areNamed(ArrayNode list) {
        long names = list.valueStream()
                .map(entry -> entry.path("name"))
                .filter(JsonNode::isString)
                .map(JsonNode::stringValue)
                .distinct()
                .count();
        return names == list.size();
    }
}
