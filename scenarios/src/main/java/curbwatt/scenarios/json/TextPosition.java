package curbwatt.scenarios.json;

/**
 * A place in a text.
 *
 * @param line line, from 1
 * @param column column, from 1
 */
record TextPosition(int line, int column) {

    /** Returns the place of a character, counted from 0. */
    static TextPosition of(String text, int offset) {
        int line = 1;
        int lineStart = 0;
        for (int i = 0; i < offset && i < text.length(); i++) {
            if (text.charAt(i) == '\n') {
                line++;
                lineStart = i + 1;
            }
        }
        return new TextPosition(line, offset - lineStart + 1);
    }
}
