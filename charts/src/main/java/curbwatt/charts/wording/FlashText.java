package curbwatt.charts.wording;

import curbwatt.charts.run.FlashComparison;
import curbwatt.charts.run.TimedRun;
import curbwatt.engine.event.Event;
import curbwatt.engine.load.Load;
import curbwatt.engine.result.WaveformPoint;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What it makes of a difference whether heads flash together or in turn, in words.
 *
 * @param comparison the runs
 */
public record FlashText(FlashComparison comparison) {

    /** Heads of the table. */
    public static final List<String> COLUMNS =
            List.of("Heads flash", "#Peak, A", "#Sag, mV", "#Lowest, V", "First trip", "Held", "#Charge at trip, %");

    /** What is compared, and by which rule. */
    public static final String RULE =
            "Together: every head on a shared clock begins with it. Interleaved: they begin in"
                    + " two to four groups of about equal current, evenly over the period. Sag: highest to lowest voltage in"
                    + " the close-up, at one instant for all. Held: until the first circuit or load is lost. Heads on clocks"
                    + " of their own are left as they are.";

    private static final String NONE = "–";

    /** Less does not show in a voltage of two decimals (V). */
    private static final double SAME_V = 0.005;

    /** A smaller sag is none (V). */
    private static final double STEADY_V = 0.001;

    /** Less does not show in a current (A). */
    private static final double SAME_A = 0.5;

    /** Trips nearer than this are at the same time: a sensor is not that good (s). */
    private static final double SAME_S = 30;

    /** The lines of the table. */
    public List<List<String>> lines() {
        return comparison.runs().stream().map(this::line).toList();
    }

    private List<String> line(TimedRun run) {
        Optional<Event> trip = run.trip();
        OptionalDouble sagV = comparison.sagV(run);
        return List.of(
                name(run) + (run.asWritten() && run.timing() != TimedRun.Timing.AS_WRITTEN ? ", as written" : ""),
                PlainText.number(run.peakA(), 1),
                sagV.isPresent() ? PlainText.number(1000 * sagV.getAsDouble(), 0) : NONE,
                PlainText.number(comparison.lowestV(run), 2),
                trip.map(event -> PlainText.quoted(event.subject()) + " " + PlainText.after(event.timeS()))
                        .orElse("none"),
                run.firstLossS().isPresent() ? PlainText.time(run.heldS()) : "throughout",
                trip.map(event -> PlainText.number(100 * chargeFraction(run, event), 1))
                        .orElse(NONE));
    }

    /** Charge of the battery that feeds what the cutoff disconnects, when it trips. */
    private static double chargeFraction(TimedRun run, Event trip) {
        BatteryText batteries = new BatteryText(run.story());
        OptionalDouble auxiliary = batteries.isBehindLink(trip.subject())
                ? batteries.auxiliaryFraction(trip.timeS())
                : OptionalDouble.empty();
        return auxiliary.orElse(trip.stateOfChargeFraction());
    }

    /** How a run's heads flash: "together", "as written", "interleaved". */
    public static String name(TimedRun run) {
        return switch (run.timing()) {
            case TOGETHER -> "together";
            case AS_WRITTEN -> "as written";
            case INTERLEAVED -> "interleaved";
        };
    }

    /** What the picture of the close-up finds, and what was drawn. */
    public Heading heading() {
        int heads = comparison.heads().stream().mapToInt(Load::heads).sum();
        String currents = currents(closeUpPeakA(comparison.together()), closeUpPeakA(comparison.interleaved()));
        String sags = sagV(comparison.together()) < STEADY_V
                ? "; flashing does not move the voltage"
                : ", and the sag from " + millivolts(sagV(comparison.together())) + " to "
                        + millivolts(sagV(comparison.interleaved()));
        return new Heading(
                currents + sags,
                "Close-up " + PlainText.after(comparison.closeUp().fromS()) + ": " + PlainText.count(heads, "head")
                        + " on shared clocks, all else alike");
    }

    /** What follows, sentence by sentence. */
    public List<String> sentences() {
        List<String> sentences = new ArrayList<>(List.of(
                currents(comparison.together().peakA(), comparison.interleaved().peakA())
                        + ", loads of every kind counted."));
        if (comparison.isCloseUpWhole()) {
            sentences.add(sags());
        }
        sentences.add(trips());
        losses().ifPresent(sentences::add);
        verdicts().ifPresent(sentences::add);
        return List.copyOf(sentences);
    }

    private static String currents(double togetherA, double apartA) {
        if (Math.abs(togetherA - apartA) < SAME_A) {
            return "Interleaving the heads leaves the peak at " + PlainText.amperes(togetherA);
        }
        return "Interleaving the heads " + (apartA < togetherA ? "cuts" : "raises") + " the peak from "
                + PlainText.amperes(togetherA) + " to " + PlainText.amperes(apartA);
    }

    private double closeUpPeakA(TimedRun run) {
        return comparison.statistics(run, WaveformPoint::loadA).getMax();
    }

    /** Sag where there is one to compare (V). */
    private double sagV(TimedRun run) {
        return comparison.sagV(run).orElse(0);
    }

    private String sags() {
        String swing = Math.max(sagV(comparison.together()), sagV(comparison.interleaved())) < STEADY_V
                ? "Flashing does not move the voltage in the close-up"
                : "Flashing moves the voltage by " + millivolts(sagV(comparison.together()))
                        + " with the heads together and by " + millivolts(sagV(comparison.interleaved()))
                        + " interleaved";
        return swing + "; the lowest of the whole scene is "
                + PlainText.volts(comparison.lowestV(comparison.together())) + " and "
                + PlainText.volts(comparison.lowestV(comparison.interleaved())) + ".";
    }

    private static String millivolts(double voltageV) {
        return PlainText.number(1000 * voltageV, 0) + " mV";
    }

    private String trips() {
        Optional<Event> together = comparison.together().trip();
        Optional<Event> apart = comparison.interleaved().trip();
        if (together.isEmpty() && apart.isEmpty()) {
            return "No cutoff trips either way.";
        }
        if (together.isEmpty() || apart.isEmpty()) {
            Event trip = together.or(() -> apart).orElseThrow();
            return PlainText.quoted(trip.subject()) + " trips " + PlainText.after(trip.timeS()) + " with the heads "
                    + (together.isPresent() ? "together" : "interleaved") + ", and not at all with them "
                    + (together.isPresent() ? "interleaved" : "together") + ".";
        }
        double laterS = apart.get().timeS() - together.get().timeS();
        if (!together.get().subject().equals(apart.get().subject())) {
            return "The first trip is that of " + when(together.get()) + " with the heads together, and of "
                    + when(apart.get()) + " interleaved.";
        }
        if (Math.abs(laterS) < SAME_S) {
            return PlainText.quoted(apart.get().subject()) + " trips "
                    + PlainText.after(apart.get().timeS()) + " either way.";
        }
        return PlainText.quoted(apart.get().subject()) + " trips " + PlainText.time(Math.abs(laterS))
                + (laterS > 0 ? " later" : " earlier") + " with the heads interleaved than together, at "
                + PlainText.percent(chargeFraction(comparison.interleaved(), apart.get())) + " charge instead of "
                + PlainText.percent(chargeFraction(comparison.together(), together.get()))
                + new FlashCause(comparison, SAME_V).because(apart.get().subject(), laterS) + ".";
    }

    /** Where something other than the trip decides how long everything holds. */
    private Optional<String> losses() {
        double togetherS = comparison.together().heldS();
        double apartS = comparison.interleaved().heldS();
        boolean isTrip = comparison.interleaved().trip().map(Event::timeS).orElse(-1.0) == apartS
                && comparison.together().trip().map(Event::timeS).orElse(-1.0) == togetherS;
        return isTrip || Math.abs(apartS - togetherS) < SAME_S
                ? Optional.empty()
                : Optional.of("Everything holds for " + PlainText.time(togetherS) + " with the heads together and for "
                        + PlainText.time(apartS) + " interleaved.");
    }

    private static String when(Event trip) {
        return PlainText.quoted(trip.subject()) + " " + PlainText.after(trip.timeS());
    }

    private Optional<String> verdicts() {
        boolean together = comparison.together().story().verdict().isMet();
        boolean apart = comparison.interleaved().story().verdict().isMet();
        if (together == apart) {
            return Optional.empty();
        }
        return Optional.of("That decides the verdict. Together: "
                + new Headline(comparison.together().story()).sentence() + " Interleaved: "
                + new Headline(comparison.interleaved().story()).sentence());
    }
}
