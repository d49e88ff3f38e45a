package curbwatt.scenarios.json;

import curbwatt.scenarios.problem.Quoted;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The smallest pieces of a JSON text with comments. Each reading method takes the offset where its piece begins and
 * returns the one after its end, or says what is wrong with it.
 *
 * @param text the whole text
 */
record TokenScan(String text) {
    private static final Pattern NUMBER = Pattern.compile("-?(?:0|[1-9][0-9]*)(?:\\.[0-9]+)?(?:[eE][-+]?[0-9]+)?");
    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}_.+\\-]+");
    private static final Pattern ESCAPE = Pattern.compile("\\\\(?:[\"\\\\/bfnrt]|u[0-9a-fA-F]{4})");

    /** Reads a text in quotes. */
    int string(int open) {
        int at = open + 1;
        while (charAt(at) != '"') {
            if (at >= text.length() || charAt(at) == '\n' || charAt(at) == '\r') {
                throw new NotJson(open, "The text that begins here is not closed on its line.", "Add a double quote.");
            }
            if (charAt(at) == '\\') {
                Matcher escape = ESCAPE.matcher(text).region(at, text.length());
                if (!escape.lookingAt()) {
                    throw new NotJson(
                            at,
                            "A backslash stands before a letter that it can't go with.",
                            "For a backslash write two.");
                }
                at = escape.end();
            } else if (charAt(at) < ' ') {
                throw new NotJson(at, "A control character, such as a tab, stands within quotes.", "Write a space.");
            } else {
                at++;
            }
        }
        return at + 1;
    }

    /** Reads a number. */
    int number(int at) {
        Matcher number = NUMBER.matcher(text).region(at, text.length());
        int end = number.lookingAt() ? number.end() : at;
        Matcher whole = WORD.matcher(text).region(at, text.length());
        int wordEnd = whole.lookingAt() ? whole.end() : end;
        if (end == at || wordEnd > end) {
            boolean unit = end > at && Character.isLetter(charAt(end));
            throw new NotJson(
                    at,
                    found(at) + " is not a number as JSON writes it.",
                    unit ? "Write the number alone; its unit is in the key." : "Write it like 12, 0.5 or -3.");
        }
        return end;
    }

    /** Reads {@code true}, {@code false} or {@code null}. */
    int word(int at) {
        for (String literal : new String[] {"true", "false", "null"}) {
            Matcher whole = WORD.matcher(text).region(at, text.length());
            if (whole.lookingAt() && whole.group().equals(literal)) {
                return whole.end();
            }
        }
        boolean name = Character.isLetter(charAt(at)) || charAt(at) == '\'';
        String found = found(at);
        boolean noNumber = found.matches("'[+-]?(NaN|Infinity|Inf|nan|inf)'");
        throw new NotJson(
                at,
                noNumber
                        ? found + " is not a number that can be computed with."
                        : "A value is expected, found is " + found + ".",
                noNumber ? "Write a finite number." : name ? "Write text in double quotes." : "Write a value here.");
    }

    /** Skips white space and comments. */
    int skip(int from) {
        int at = from;
        while (at < text.length()) {
            if (" \t\r\n".indexOf(text.charAt(at)) >= 0) {
                at++;
            } else if (text.startsWith("//", at)) {
                int end = text.indexOf('\n', at);
                at = end < 0 ? text.length() : end;
            } else if (text.startsWith("/*", at)) {
                int end = text.indexOf("*/", at + 2);
                if (end < 0) {
                    throw new NotJson(at, "The comment that begins here is never closed.", "Close it with */.");
                }
                at = end + 2;
            } else if (text.charAt(at) == '#') {
                throw new NotJson(at, "A comment can't begin with '#'.", "Begin it with //.");
            } else {
                return at;
            }
        }
        return at;
    }

    /** What stands at an offset, as a reader sees it: a word, a quoted beginning, or one character. */
    String found(int at) {
        if (at >= text.length()) {
            return "the end of the file";
        }
        Matcher word = WORD.matcher(text).region(at, text.length());
        return Quoted.name(word.lookingAt() ? word.group() : text.substring(at, text.offsetByCodePoints(at, 1)));
    }

    /** The character at an offset; NUL past the end. */
    char charAt(int at) {
        return at < text.length() ? text.charAt(at) : '\0';
    }
}
