package curbwatt.charts.wording;

import curbwatt.charts.run.CircuitWiring;
import curbwatt.engine.control.LowVoltageCutoff;
import curbwatt.engine.control.SensePoint;
import curbwatt.engine.wiring.DropLimit;
import curbwatt.engine.wiring.FuseRating;
import curbwatt.engine.wiring.WireAdvice;
import curbwatt.engine.wiring.WireSize;
import curbwatt.engine.wiring.WiringFinding;
import curbwatt.engine.wiring.WiringRule;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * What feeds drop, what the rules say of their wires and fuses, and what a cutoff's own sense point loses; as lines of
 * tables, for the page and for the terminal.
 *
 * @param circuits the circuits of a vehicle
 * @param cutoffs its cutoffs
 */
public record WiringText(List<CircuitWiring> circuits, List<LowVoltageCutoff> cutoffs) {

    /** What every place that shows this has to say. */
    public static final String CAUTION =
            "This is advice from figures, not a certificate: it has not seen the truck. What the"
                    + " builder's instructions and the local code ask comes first.";

    /** Where the limits of a drop come from. */
    public static final String DROP_SOURCE =
            "The drop is that of the feed out and back, of 12 V, at the largest mean current of"
                    + " a phase. Limits: 3 % for what safety or a radio depends on, 10 % for the rest ("
                    + WiringRule.DROP.source() + ").";

    /** Where no wire is known. */
    public static final String UNKNOWN =
            "The scenario gives no feed as a wire with its length: wire and fuse are not checked.";

    /** Heads of {@link #drops}. */
    public static final List<String> DROP_HEADS =
            List.of("Circuit", "Remark", "#Feed, mΩ", "#Mean, A", "#Peak, A", "#Drop, V", "#At peak, V", "#Drop, %");

    /** Heads of {@link #findings}. */
    public static final List<String> FINDING_HEADS = List.of("Circuit", "Kept", "Rule", "#Found", "#Allowed", "Source");

    private static final int LEAST_FOR_LARGEST = 2;

    /** Copies the lists. */
    public WiringText {
        circuits = List.copyOf(circuits);
        cutoffs = List.copyOf(cutoffs);
    }

    /** Which circuit drops most; empty where none drops anything, or there is but one. */
    public OptionalInt largest() {
        return circuits.size() < LEAST_FOR_LARGEST
                ? OptionalInt.empty()
                : IntStream.range(0, circuits.size())
                        .filter(i -> circuits.get(i).meanDropV() > 0)
                        .boxed()
                        .max(Comparator.comparingDouble(i -> circuits.get(i).meanDropV()))
                        .map(OptionalInt::of)
                        .orElse(OptionalInt.empty());
    }

    /** One line for each circuit. */
    public List<List<String>> drops() {
        int largest = largest().orElse(-1);
        return IntStream.range(0, circuits.size())
                .mapToObj(i -> drop(circuits.get(i), i == largest))
                .toList();
    }

    private static List<String> drop(CircuitWiring wiring, boolean largest) {
        String within = wiring.dropFraction() <= DropLimit.CRITICAL.fraction()
                ? "within 3 %"
                : wiring.dropFraction() <= DropLimit.OTHER.fraction() ? "over 3 %, within 10 %" : "OVER 10 %";
        return List.of(
                wiring.circuit().name(),
                largest ? "largest drop; " + within : within,
                PlainText.number(1000 * wiring.circuit().feedOhm(), 1),
                PlainText.number(wiring.meanA(), 1),
                PlainText.number(wiring.peakA(), 1),
                PlainText.number(wiring.meanDropV(), 2),
                PlainText.number(wiring.peakDropV(), 2),
                PlainText.number(100 * wiring.dropFraction(), 2));
    }

    /** One sentence for each cutoff that senses behind a feed. */
    public List<String> senseDrops() {
        return cutoffs.stream()
                .filter(cutoff -> cutoff.sense() instanceof SensePoint.FeedEnd)
                .flatMap(cutoff -> circuits.stream()
                        .filter(wiring -> ((SensePoint.FeedEnd) cutoff.sense())
                                .circuit()
                                .equals(wiring.circuit().name()))
                        .map(wiring -> senseDrop(cutoff, wiring)))
                .toList();
    }

    private static String senseDrop(LowVoltageCutoff cutoff, CircuitWiring wiring) {
        return PlainText.quoted(cutoff.name()) + " senses at the end of "
                + PlainText.quoted(wiring.circuit().name()) + ": with its loads on it reads "
                + PlainText.volts(wiring.meanDropV()) + " less than the node on average and "
                + PlainText.volts(wiring.peakDropV()) + " less at the peak. Its trip level of "
                + PlainText.volts(cutoff.tripV()) + " is one of " + PlainText.volts(cutoff.tripV() + wiring.meanDropV())
                + " at the node.";
    }

    /**
     * One line for each rule that a circuit is held against, those that are broken first; empty where no wire is known.
     */
    public List<List<String>> findings() {
        return circuits.stream()
                .flatMap(wiring -> wiring.advice().stream())
                .flatMap(advice -> advice.findings().stream()
                        .sorted(Comparator.comparing(WiringFinding::met))
                        .map(finding -> finding(advice, finding)))
                .toList();
    }

    private static List<String> finding(WireAdvice advice, WiringFinding finding) {
        return List.of(
                advice.plan().name(),
                finding.met() ? "kept" : "NOT KEPT",
                finding.rule().text(),
                amount(finding, finding.figure()),
                amount(finding, finding.limit()),
                finding.rule().source());
    }

    private static String amount(WiringFinding finding, double value) {
        return switch (finding.rule()) {
            case FUSE_PRESENT -> value > 0 ? "yes" : "none";
            case DROP, FUSE_CARRIES_LOAD -> Double.isFinite(value) ? PlainText.number(100 * value, 1) + " %" : "–";
            default ->
                Double.isFinite(value) ? (PlainText.number(value, 2) + " " + finding.unit()).strip() : "no limit";
        };
    }

    /** What would do, one sentence for each circuit that breaks a rule and draws something in the scene. */
    public List<String> remedies() {
        return circuits.stream()
                .flatMap(wiring -> wiring.advice().stream())
                .filter(advice -> !advice.allMet())
                // what the scene never switches on would be served by anything
                .filter(advice -> advice.plan().current().peakA() > 0)
                .map(advice -> PlainText.quoted(advice.plan().name()) + " would be served by "
                        + advice.fuse().map(WiringText::fuse).orElse("no blade fuse that is sold")
                        + " and " + advice.cable().map(WireSize::label).orElse("no cable of the table") + " or "
                        + advice.metric().map(WireSize::label).orElse("no metric size of the table") + ".")
                .toList();
    }

    private static String fuse(FuseRating fuse) {
        return "a fuse of " + PlainText.number(fuse.ratedA(), fuse.ratedA() < 10 ? 1 : 0) + " A";
    }
}
