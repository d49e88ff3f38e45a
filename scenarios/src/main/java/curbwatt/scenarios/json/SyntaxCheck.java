package curbwatt.scenarios.json;

import curbwatt.scenarios.problem.Problem;
import curbwatt.scenarios.problem.Quoted;
import curbwatt.scenarios.problem.SourcePosition;
import java.util.Optional;

/**
 * Says in one sentence where and why a text is no JSON with comments, and what was expected. The parser proper says it
 * in its own terms and stops wherever it notices; this walks the text for the sake of the sentence alone.
 */
final class SyntaxCheck {
    private static final int DEEPEST = 40;

    private final String text;
    private final TokenScan scan;

    private SyntaxCheck(String text) {
        this.text = text;
        this.scan = new TokenScan(text);
    }

    /** Returns what is wrong, if anything is. */
    static Optional<Problem> of(SourceText source) {
        try {
            new SyntaxCheck(source.text()).document();
            return Optional.empty();
        } catch (NotJson e) {
            TextPosition at = TextPosition.of(source.text(), e.offset());
            SourcePosition position = new SourcePosition(source.name(), at.line(), at.column(), "");
            return Optional.of(new Problem(Problem.Severity.ERROR, position, e.getMessage(), e.remedy()));
        }
    }

    private void document() {
        int start = scan.skip(0);
        if (start == text.length()) {
            throw new NotJson(0, "The file is empty.", "Start from one of the demo scenarios.");
        }
        int end = scan.skip(value(start, 1));
        if (end < text.length()) {
            throw new NotJson(
                    end, "Something follows after the end of the scenario: " + scan.found(end) + ".", "Remove it.");
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
            case '"' -> scan.string(at);
            case '-', '0', '1', '2', '3', '4', '5', '6', '7', '8', '9' -> scan.number(at);
            default -> scan.word(at);
        };
    }

    private int group(int open, int depth, char close) {
        int at = scan.skip(open + 1);
        if (scan.charAt(at) == close) {
            return at + 1;
        }
        while (true) {
            int end = close == '}' ? entry(at, open, depth) : value(at, depth + 1);
            at = scan.skip(end);
            if (scan.charAt(at) == close) {
                return at + 1;
            }
            if (scan.charAt(at) != ',') {
                throw unfinished(open, end, at, close);
            }
            int comma = at;
            at = scan.skip(at + 1);
            if (scan.charAt(at) == close) {
                throw new NotJson(
                        comma,
                        "A comma stands after the last entry, before " + Quoted.name("" + close) + ".",
                        "Remove it.");
            }
        }
    }

    private NotJson unfinished(int open, int end, int at, char close) {
        char found = scan.charAt(at);
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
                "After this value a comma or " + Quoted.name("" + close) + " is expected, found is " + scan.found(at)
                        + ".",
                "Is a comma missing?");
    }

    private int entry(int at, int open, int depth) {
        if (at >= text.length()) {
            throw unfinished(open, at, at, '}');
        }
        if (scan.charAt(at) != '"') {
            boolean decimals = Character.isDigit(scan.charAt(at));
            throw new NotJson(
                    at,
                    "A key in double quotes is expected, found is " + scan.found(at) + ".",
                    decimals
                            ? "If the comma before it is a decimal one, write a point."
                            : "Write it in double quotes.");
        }
        int colon = scan.skip(scan.string(at));
        if (scan.charAt(colon) != ':') {
            throw new NotJson(
                    colon,
                    "After the key " + text.substring(at, Math.min(scan.string(at), at + 60))
                            + " a colon is expected, found is " + scan.found(colon) + ".",
                    "Write a colon between key and value.");
        }
        return value(scan.skip(colon + 1), depth + 1);
    }
}
