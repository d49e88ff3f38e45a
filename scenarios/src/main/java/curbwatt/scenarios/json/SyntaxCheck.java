package curbwatt.scenarios.json;

import curbwatt.scenarios.problem.Problem;
import curbwatt.scenarios.problem.Quoted;
import curbwatt.scenarios.problem.SourcePosition;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Says in one sentence where and why a text is no JSON with comments, and what was expected. The parser proper says it
 * in its own terms and stops wherever it notices; this walks the text for the sake of the sentence alone.
 */
final class SyntaxCheck {
    private static final int DEEPEST = 40;
    private static final Pattern NUMBER = Pattern.compile("-?(?:0|[1-9][0-9]*)(?:\\.[0-9]+)?(?:[eE][-+]?[0-9]+)?");
    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}_.+\\-]+");
    private static final Pattern ESCAPE = Pattern.compile("\\\\(?:[\"\\\\/bfnrt]|u[0-9a-fA-F]{4})");

    private final String text;

    private SyntaxCheck(String text) {
        this.text = text;
    }

    /** Returns what is wrong, if anything is. */
    static Optional<Problem> of(SourceText source) {
        try {
            new SyntaxCheck(source.text()).document();
            return Optional.empty();
        } catch (NotJson e) {
            TextPosition at = TextPosition.of(source.text(), e.offset);
            SourcePosition position = new SourcePosition(source.name(), at.line(), at.column(), "");
            return Optional.of(new Problem(Problem.Severity.ERROR, position, e.getMessage(), e.remedy));
        }
    }

    private void document() {
        int start = skip(0);
        if (start == text.length()) {
            throw new NotJson(0, "The file is empty.", "Start from one of the demo scenarios.");
        }
        int end = skip(value(start, 1));
        if (end < text.length()) {
            throw new NotJson(
                    end, "Something follows after the end of the scenario: " + found(end) + ".", "Remove it.");
        }
    }

    /** Each reading method takes the offset where its piece begins and returns the one after its end. */
    private int value(int at, int depth) {
        if (depth > DEEPEST) {
            throw new NotJson(at, "Brackets are nested more than " + DEEPEST + " deep.", "No scenario needs that.");
        }
        if (at >= text.length()) {
            throw new NotJson(at, "The text ends where a value is expected.", "Is the file whole?");
        }
        return switch (text.charAt(at)) {
            case '{' -> group(at, depth, '}');
            case '[' -> group(at, depth, ']');
            case '"' -> string(at);
            case '-', '0', '1', '2', '3', '4', '5', '6', '7', '8', '9' -> number(at);
            default -> word(at);
        };
    }

    private int group(int open, int depth, char close) {
        int at = skip(open + 1);
        if (charAt(at) == close) {
            return at + 1;
        }
        while (true) {
            int end = close == '}' ? entry(at, open, depth) : value(at, depth + 1);
            at = skip(end);
            if (charAt(at) == close) {
                return at + 1;
            }
            if (charAt(at) != ',') {
                throw unfinished(open, end, at, close);
            }
            int comma = at;
            at = skip(at + 1);
            if (charAt(at) == close) {
                throw new NotJson(
                        comma,
                        "A comma stands after the last entry, before " + Quoted.name("" + close) + ".",
                        "Remove it.");
            }
        }
    }

    private NotJson unfinished(int open, int end, int at, char close) {
        char found = charAt(at);
        String opened = Quoted.name("" + text.charAt(open)) + " of line "
                + TextPosition.of(text, open).line();
        if (at >= text.length()) {
            return new NotJson(
                    open,
                    "The bracket " + Quoted.name("" + text.charAt(open)) + " is never closed.",
                    "Close it with " + Quoted.name("" + close) + ".");
        }
        if (found == '}' || found == ']') {
            return new NotJson(
                    at,
                    "The bracket " + opened + " is closed with " + Quoted.name("" + found) + ".",
                    "Close it with " + Quoted.name("" + close) + ".");
        }
        return new NotJson(
                end - 1,
                "After this value a comma or " + Quoted.name("" + close) + " is expected, found is " + found(at) + ".",
                "Is a comma missing?");
    }

    private int entry(int at, int open, int depth) {
        if (at >= text.length()) {
            throw unfinished(open, at, at, '}');
        }
        if (charAt(at) != '"') {
            boolean decimals = Character.isDigit(charAt(at));
            throw new NotJson(
                    at,
                    "A key in double quotes is expected, found is " + found(at) + ".",
                    decimals
                            ? "If the comma before it is a decimal one, write a point."
                            : "Write it in double quotes.");
        }
        int colon = skip(string(at));
        if (charAt(colon) != ':') {
            throw new NotJson(
                    colon,
                    "After the key " + text.substring(at, Math.min(string(at), at + 60))
                            + " a colon is expected, found is " + found(colon) + ".",
                    "Write a colon between key and value.");
        }
        return value(skip(colon + 1), depth + 1);
    }

    private int string(int open) {
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

    private int number(int at) {
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

    private int word(int at) {
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
    private int skip(int from) {
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
    private String found(int at) {
        if (at >= text.length()) {
            return "the end of the file";
        }
        Matcher word = WORD.matcher(text).region(at, text.length());
        return Quoted.name(word.lookingAt() ? word.group() : text.substring(at, text.offsetByCodePoints(at, 1)));
    }

    private char charAt(int at) {
        return at < text.length() ? text.charAt(at) : '\0';
    }

    private static final class NotJson extends RuntimeException {
        private static final long serialVersionUID = 1;

        private final int offset;
        private final String remedy;

        NotJson(int offset, String message, String remedy) {
            super(message);
            this.offset = offset;
            this.remedy = remedy;
        }
    }
}
