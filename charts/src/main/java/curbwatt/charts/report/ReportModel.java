package curbwatt.charts.report;

import curbwatt.charts.figure.Picture;
import curbwatt.charts.wording.KeyFigure;
import java.util.List;
import java.util.Locale;

/**
 * Everything the page may show, in words.
 *
 * @param title the scenario's title
 * @param description what it is about; may be empty
 * @param vehicle the vehicle's name
 * @param source where the scenario came from
 * @param tone whether the answer is good news
 * @param headline the answer in a sentence
 * @param requirements what was asked, one by one; may be empty
 * @param keyFigures the few figures that stand beside the answer
 * @param main the picture under the answer
 * @param reasons why the answer is what it is, in sentences
 * @param pictures the other pictures
 * @param tables the tables
 * @param ledgers where charge and energy went, in sentences; may be empty
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
        Tone tone,
        String headline,
        List<Asked> requirements,
        List<KeyFigure> keyFigures,
        Shown main,
        List<String> reasons,
        List<Shown> pictures,
        List<Table> tables,
        List<String> ledgers,
        List<String> doubts,
        List<String> assumptions,
        List<String> cautions,
        List<FileLink> files) {

    /** Whether anything was asked. */
    public boolean asks() {
        return !requirements.isEmpty();
    }

    /** Whether there are ledgers to show. */
    public boolean hasLedgers() {
        return !ledgers.isEmpty();
    }

    /** Whether an answer is good news. */
    public enum Tone {
        /** It is. */
        YES,
        /** It is not. */
        NO,
        /** Neither: nothing was asked, or nothing can be said. */
        OPEN;

        /** Its class in the style sheet. */
        public String css() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * A requirement.
     *
     * @param met whether it was met
     * @param asked what was asked
     * @param found what came out
     * @param limit what was asked as a figure
     */
    public record Asked(boolean met, String asked, String found, String limit) {}

    /**
     * A picture in the page.
     *
     * @param name its name, also that of its files
     * @param title what it finds
     * @param svg the drawing
     */
    public record Shown(String name, String title, String svg) {

        static Shown of(Picture picture) {
            return new Shown(picture.name(), picture.caption().title(), picture.svgInline());
        }
    }

    /**
     * A file or folder beside the page.
     *
     * @param name its name, relative to the page
     * @param what what it holds, beginning with "with"
     */
    public record FileLink(String name, String what) {}
}
