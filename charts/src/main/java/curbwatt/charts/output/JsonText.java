package curbwatt.charts.output;

import java.util.Iterator;
import java.util.List;
import java.util.Map;

/**
 * Spells a tree as JSON: for files with two spaces a level, entries on lines of their own and lists of numbers on one
 * line; for other programs all on one line.
 */
public final class JsonText {

    private final StringBuilder text = new StringBuilder();
    private final boolean tight;

    private JsonText(boolean tight) {
        this.tight = tight;
    }

    /** The document, ending with a line break. */
    public static String of(JsonObject root) {
        return spelt(root, false);
    }

    /** The document on one line, with no space that isn't needed, ending with a line break. */
    public static String onOneLine(JsonObject root) {
        return spelt(root, true);
    }

    private static String spelt(JsonObject root, boolean tight) {
        JsonText json = new JsonText(tight);
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
        String inner = tight ? "" : indent + "  ";
        String lineBreak = tight ? "" : "\n";
        text.append('{').append(lineBreak);
        for (Iterator<Map.Entry<String, Object>> each = entries.entrySet().iterator(); each.hasNext(); ) {
            Map.Entry<String, Object> entry = each.next();
            text.append(inner);
            string(entry.getKey());
            text.append(tight ? ":" : ": ");
            value(entry.getValue(), inner);
            text.append(each.hasNext() ? "," : "").append(lineBreak);
        }
        text.append(tight ? "" : indent).append('}');
    }

    private void list(List<?> list, String indent) {
        boolean oneLine = tight || list.stream().allMatch(item -> item instanceof Number || item instanceof String);
        String between = tight ? "," : oneLine ? ", " : ",";
        String inner = indent + "  ";
        text.append('[');
        for (Iterator<?> each = list.iterator(); each.hasNext(); ) {
            text.append(oneLine ? "" : "\n" + inner);
            value(each.next(), inner);
            text.append(each.hasNext() ? between : oneLine ? "" : "\n" + indent);
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
