package curbwatt.engine.bench;

import java.util.Locale;

/** Markdown under way. */
final class Page {

    private final StringBuilder text = new StringBuilder();

    /** A paragraph, or a heading. */
    Page say(String paragraph, Object... figures) {
        text.append(String.format(Locale.ROOT, paragraph, figures)).append("\n\n");
        return this;
    }

    /** Begins a table; the columns after the first are figures. */
    Page table(String... columns) {
        row(columns);
        text.append("|---|").append("---:|".repeat(columns.length - 1)).append('\n');
        return this;
    }

    /** A row of the table begun. */
    Page row(String... cells) {
        text.append("| ").append(String.join(" | ", cells)).append(" |\n");
        return this;
    }

    /** Ends the table. */
    Page end() {
        text.append('\n');
        return this;
    }

    /** A figure with three digits, without a power of ten. */
    static String figure(double value) {
        double magnitude = Math.abs(value);
        int decimals = magnitude >= 100 ? 0 : magnitude >= 10 ? 1 : magnitude >= 1 ? 2 : 3;
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }

    static String met(boolean met) {
        return met ? "met" : "**missed**";
    }

    @Override
    public String toString() {
        return text.toString().strip() + "\n";
    }
}
