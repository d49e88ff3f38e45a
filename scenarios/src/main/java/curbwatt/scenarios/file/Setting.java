package curbwatt.scenarios.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A value set beside the file: {@code path=value}, the path as problems spell it.
 *
 * <p>An entry of a list is meant by its place, {@code vehicle.cutoffs[0].tripV}, or by its name, {@code
 * vehicle.cutoffs[Equipment cutoff].tripV}. The value is JSON; what is not is taken as a text. No value takes the key
 * out.
 *
 * @param path the place
 * @param value the value as written; empty: the key is taken out
 */
public record Setting(String path, String value) {
    private static final Pattern STEP = Pattern.compile("\\.?([^.\\[\\]]+)|\\[([^\\]]+)\\]");

    /**
     * A step of the path.
     *
     * @param name key, or place or name of an entry of a list
     * @param inList whether it is an entry of a list
     */
    public record Step(String name, boolean inList) {}

    /** Refuses missing parts. */
    public Setting {
        Objects.requireNonNull(path, "path");
        Objects.requireNonNull(value, "value");
    }

    /**
     * Reads {@code path=value}.
     *
     * @throws IllegalArgumentException if it is nothing of the kind; the message is for the user
     */
    public static Setting of(String text) {
        int sign = equalsSign(text);
        if (sign < 1) {
            throw new IllegalArgumentException("'" + text + "' sets nothing; write a path of the scenario, =, and a"
                    + " value, as in vehicle.cutoffs[0].tripV=11.6");
        }
        Setting setting = new Setting(
                text.substring(0, sign).strip(), text.substring(sign + 1).strip());
        if (setting.steps().isEmpty()) {
            throw new IllegalArgumentException("'" + setting.path + "' is no path; write keys with dots between and"
                    + " entries of lists in brackets, as in vehicle.circuits[Radios].loads[0].ratedCurrentA");
        }
        return setting;
    }

    /** The first equals sign outside brackets: a name may have one. */
    private static int equalsSign(String text) {
        int depth = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            depth += c == '[' ? 1 : c == ']' ? -1 : 0;
            if (c == '=' && depth <= 0) {
                return i;
            }
        }
        return -1;
    }

    /** Whether the key is taken out. */
    public boolean takesOut() {
        return value.isEmpty();
    }

    /** The path, step by step; none if it can't be read. */
    public List<Step> steps() {
        List<Step> steps = new ArrayList<>();
        Matcher step = STEP.matcher(path);
        int at = 0;
        while (at < path.length()) {
            if (!step.region(at, path.length()).lookingAt()) {
                return List.of();
            }
            boolean inList = step.group(2) != null;
            steps.add(new Step(inList ? step.group(2) : step.group(1), inList));
            at = step.end();
        }
        return List.copyOf(steps);
    }

    @Override
    public String toString() {
        return path + "=" + value;
    }
}
