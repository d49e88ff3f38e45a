package curbwatt.engine.check;

import curbwatt.engine.check.Published.Obtained;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The text of {@code docs/validation.md}: same rows, same bytes, in whatever order they came. */
final class ValidationPage {

    private static final String PREFACE = """
            # Validation

            Values from outside the project, and what Curbwatt makes of them. The build writes this page from the tests
            named `…PublishedTest`. Every build asserts each row: a difference larger than its tolerance fails it.
            Do not edit the page; change the test.

            *Obtained* says how a published value came to us, and so how far it may be trusted:

            """;

    private static final String HEAD = """
            | Quantity and conditions | Published | Ours | Difference | Tolerance | Unit | Obtained | Source |
            |---|---:|---:|---:|---:|---|---|---|
            """;

    private ValidationPage() {}

    static String text(List<ValidationRow> rows) {
        StringBuilder page = new StringBuilder(PREFACE);
        for (Obtained obtained : Obtained.values()) {
            page.append("- *" + word(obtained) + "*: " + obtained.meaning() + "\n");
        }
        String topic = "";
        for (ValidationRow row : sorted(rows)) {
            if (!row.published().topic().equals(topic)) {
                topic = row.published().topic();
                page.append("\n## " + escaped(topic) + "\n\n" + HEAD);
            }
            page.append(line(row));
        }
        return page.toString();
    }

    private static List<ValidationRow> sorted(List<ValidationRow> rows) {
        List<ValidationRow> sorted = new ArrayList<>(rows);
        sorted.sort(ValidationRow.ORDER);
        return sorted;
    }

    private static String line(ValidationRow row) {
        Published published = row.published();
        double tolerance = published.tolerance();
        double scale = Math.max(Math.abs(published.value()), Math.abs(row.oursValue()));
        return "| "
                + String.join(
                        " | ",
                        escaped(published.what()),
                        Digits.plain(published.value()),
                        Digits.resolved(row.oursValue(), tolerance, scale),
                        Digits.difference(row.oursValue(), published.value(), tolerance, scale),
                        Digits.plain(tolerance),
                        escaped(published.unit()),
                        word(published.obtained()),
                        escaped(published.source()))
                + " |\n";
    }

    private static String word(Obtained obtained) {
        return obtained.name().toLowerCase(Locale.ROOT);
    }

    /** Keeps a cell one cell: no line breaks, and none of the signs that end a cell or begin a tag. */
    private static String escaped(String text) {
        return text.strip().replaceAll("\\s+", " ").replace("|", "\\|").replace("<", "&lt;");
    }
}
