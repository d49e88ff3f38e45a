package curbwatt.charts.report;

import curbwatt.charts.wording.KeyFigure;
import java.util.List;
import java.util.Optional;

/**
 * Everything the page may show, in words.
 *
 * @param title the scenario's title
 * @param description what it is about; may be empty
 * @param vehicle the vehicle's name
 * @param source where the scenario came from
 * @param met whether everything asked was met
 * @param asks whether anything was asked
 * @param headline the answer in a sentence
 * @param requirements what was asked, one by one
 * @param keyFigures the few figures that stand beside the answer
 * @param main the picture under the answer
 * @param pictures the other pictures
 * @param tables the tables
 * @param reasons why the answer is what it is, in sentences
 * @param ledgers where charge and energy went, if the page is about one run
 * @param doubts which numbers not to trust
 * @param assumptions what was estimated
 * @param cautions safety lines
 * @param files what lies beside the page
 */
public record ReportModel(
        String title,
        String description,
        String vehicle,
        String source,
        boolean met,
        boolean asks,
        String headline,
        List<Asked> requirements,
        List<KeyFigure> keyFigures,
        Shown main,
        List<Shown> pictures,
        List<Table> tables,
        List<String> reasons,
        Optional<Ledgers> ledgers,
        List<String> doubts,
        List<String> assumptions,
        List<String> cautions,
        List<Beside> files) {

    /** The ledgers as a list of one or none: an empty {@link Optional} would still open its section of the page. */
    public List<Ledgers> ledgerList() {
        return ledgers.stream().toList();
    }

    /**
     * A requirement.
     *
     * @param met whether it was met
     * @param asked what was asked
     * @param found what came out
     * @param limit what was asked as a figure
     * @param reason why
     */
    public record Asked(boolean met, String asked, String found, String limit, String reason) {}

    /**
     * A picture in the page.
     *
     * @param name its name, also that of its files
     * @param title what it finds
     * @param svg the drawing
     */
    public record Shown(String name, String title, String svg) {}

    /**
     * The ledgers of a run, in sentences.
     *
     * @param charge that of charge
     * @param energy that of energy
     */
    public record Ledgers(List<String> charge, List<String> energy) {}

    /**
     * A file beside the page.
     *
     * @param name its name
     * @param holds what it holds, after "with"
     */
    public record Beside(String name, String holds) {}
}
