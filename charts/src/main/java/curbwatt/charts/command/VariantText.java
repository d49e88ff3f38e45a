package curbwatt.charts.command;

import curbwatt.scenarios.file.Setting;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A variant of a scenario as the command line spells it: {@code NAME: PATH=VALUE; PATH=VALUE}. The name and its colon
 * may be left out. Semicolons and colons inside quotes, brackets and braces belong to values and names.
 *
 * @param name what it is called
 * @param settings what it sets anew
 */
record VariantText(String name, List<Setting> settings) {

    VariantText {
        settings = List.copyOf(settings);
    }

    /**
     * Reads a variant.
     *
     * @throws InputException if it sets nothing
     */
    static VariantText of(String text) {
        int equals = first(text, '=');
        int colon = first(text, ':');
        boolean named = colon > 0 && colon < equals;
        String rest = named ? text.substring(colon + 1) : text;
        List<Setting> settings = new ArrayList<>();
        for (String part : split(rest)) {
            settings.add(setting(part, text));
        }
        if (settings.isEmpty()) {
            throw new InputException("--variant '" + text + "' sets nothing; write NAME: PATH=VALUE; PATH=VALUE");
        }
        String name = named
                ? text.substring(0, colon).strip()
                : settings.stream().map(VariantText::shortened).collect(Collectors.joining(", "));
        return new VariantText(name, settings);
    }

    private static Setting setting(String part, String text) {
        try {
            return Setting.of(part);
        } catch (IllegalArgumentException e) {
            throw new InputException("--variant '" + text + "': " + e.getMessage());
        }
    }

    /** The last key and its value. */
    private static String shortened(Setting setting) {
        String key = setting.steps().get(setting.steps().size() - 1).name();
        return setting.takesOut() ? "no " + key : key + " " + setting.value();
    }

    private static List<String> split(String text) {
        List<String> parts = new ArrayList<>();
        String left = text;
        for (int at = first(left, ';'); at >= 0; at = first(left, ';')) {
            parts.add(left.substring(0, at).strip());
            left = left.substring(at + 1);
        }
        parts.add(left.strip());
        return parts.stream().filter(part -> !part.isEmpty()).toList();
    }

    /** The first such sign outside quotes, brackets and braces; -1: there is none. */
    private static int first(String text, char sign) {
        int depth = 0;
        boolean quoted = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"' && (i == 0 || text.charAt(i - 1) != '\\')) {
                quoted = !quoted;
            } else if (!quoted) {
                if (c == sign && depth <= 0) {
                    return i;
                }
                depth += "[{".indexOf(c) >= 0 ? 1 : "]}".indexOf(c) >= 0 ? -1 : 0;
            }
        }
        return -1;
    }
}
