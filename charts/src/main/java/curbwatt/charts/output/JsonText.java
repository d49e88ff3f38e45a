package curbwatt.charts.output;

import java.util.Iterator;
import java.util.List;
import java.util.Map;

/** Spells a tree as JSON, two spaces a level, entries on lines of their own; lists of numbers stay on one line. */
public final class JsonText {

    private final StringBuilder text = new StringBuilder();

    private JsonText() {}

    /** The document, ending with a line break. */
    public static String of(JsonObject root) {
        JsonText json = new JsonText();
        json.value(root, "");
        return json.text.append('\n').toString();
    }

    private void value(Object value, String indent) {
        if (value instanceof JsonObject object) {
            object(object.entries(), indent);
        } else if (value instanceof List<?> list) {
            list(list, indent);
        } else if (value instanceof String string) {
            string(string);
        } else if (value instanceof Double number) {
            text.append(Double.isFinite(number) ? DigitText.of(number) : "null");
        } else if (value == null || value instanceof Boolean || value instanceof Integer || value instanceof Long) {
            text.append(value);
        } else {
            throw new IllegalArgumentException(
                    "no JSON for a " + value.getClass().getSimpleName());
        }
    }

    private void object(Map<String, Object> entries, String indent) {
        if (entries.isEmpty()) {
            text.append("{}");
            return;
        }
        String inner = indent + "  ";
        text.append("{\n");
        for (Iterator<Map.Entry<String, Object>> each = entries.entrySet().iterator(); each.hasNext(); ) {
            Map.Entry<String, Object> entry = each.next();
            text.append(inner);
            string(entry.getKey());
            text.append(": ");
            value(entry.getValue(), inner);
            text.append(each.hasNext() ? ",\n" : "\n");
        }
        text.append(indent).append('}');
    }

    private void list(List<?> list, String indent) {
        boolean oneLine = list.stream().allMatch(item -> item instanceof Number || item instanceof String);
        String inner = indent + "  ";
        text.append('[');
        for (Iterator<?> each = list.iterator(); each.hasNext(); ) {
            text.append(oneLine ? "" : "\n" + inner);
            value(each.next(), inner);
            text.append(each.hasNext() ? (oneLine ? ", " : ",") : (oneLine ? "" : "\n" + indent));
        }
        text.append(']');
    }

    private void string(String string) {
        text.append('"');
        string.chars().forEach(c -> {
            switch (c) {
                case '"' -> text.append("\\\"");
                case '\\' -> text.append("\\\\");
                case '\n' -> text.append("\\n");
                case '\t' -> text.append("\\t");
                case '\r' -> text.append("\\r");
                default -> {
                    if (c < ' ') {
                        text.append(String.format("\\u%04x", c));
                    } else {
                        text.append((char) c);
                    }
                }
            }
        });
        text.append('"');
    }
}
