package curbwatt.charts.wording;

import curbwatt.charts.run.RunStory;
import curbwatt.engine.budget.LoadBudget;
import curbwatt.engine.event.Event;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.result.PhaseSummary;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.result.WaveformPoint;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.Optional;

/**
 * Titles that say what a chart shows to be so.
 *
 * @param story the run
 */
public record ChartTitle(RunStory story) {

    /** Smallest mean battery current of a phase that is worth a title (A). */
    private static final double NOTICEABLE_A = 0.5;

    /** Voltage and charge over the scene: the verdict itself, in its short form. */
    public Heading voltage() {
        RunResult result = story.result();
        Optional<Event> opened = first(EventKind.CUTOFF_TRIPPED).or(() -> first(EventKind.RUN_TIME_LIMIT_REACHED));
        String lowest = "voltage never below " + PlainText.volts(result.lowestV());
        String title;
        if (result.restartTimeS().isPresent()) {
            title = "The engine would not start " + from(result.restartTimeS().getAsDouble());
        } else if (opened.isPresent()) {
            Event event = opened.get();
            title = PlainText.quoted(event.subject()) + " opens " + PlainText.after(event.timeS()) + " with "
                    + PlainText.percent(event.stateOfChargeFraction()) + " charge left";
        } else {
            title = PlainText.percent(result.endChargeFraction()) + " charge left " + PlainText.after(result.durationS())
                    + ", " + lowest;
        }
        return new Heading(title, "Battery voltage and state of charge, " + story.scenario().title());
    }

    /** Currents over the scene: whether the alternator carries the load. */
    public Heading balance() {
        Optional<PhaseSummary> notCarried = story.result().phases().stream()
                .filter(PhaseSummary::engineRan)
                .filter(phase -> phase.meanBatteryA() > NOTICEABLE_A)
                .max(Comparator.comparingDouble(PhaseSummary::meanBatteryA));
        Optional<PhaseSummary> off = story.result().phases().stream()
                .filter(phase -> !phase.engineRan())
                .max(Comparator.comparingDouble(PhaseSummary::meanBatteryA));
        String title = notCarried.map(phase -> "In " + PlainText.quoted(phase.phase()) + " the battery adds "
                        + PlainText.amperes(phase.meanBatteryA()) + " to what the alternator gives")
                .or(() -> off.map(phase -> "In " + PlainText.quoted(phase.phase()) + " the battery carries "
                        + PlainText.amperes(phase.meanBatteryA()) + " alone"))
                .orElse("The alternator carries every load");
        return new Heading(title, "Mean currents by circuit, against what alternator and battery give");
    }

    /** Alternator output over engine speed: from which speed on it carries the load. */
    public Heading alternator() {
        Optional<LoadBudget> heaviest = story.scenario().scene().phases().stream()
                .filter(phase -> phase.mode().isRunning())
                .map(phase -> LoadBudget.of(story.scenario().vehicle(), phase))
                .max(Comparator.comparingDouble(LoadBudget::meanA));
        String title = heaviest.map(budget -> budget.balanceRpm().isPresent()
                        ? "The hot alternator carries " + PlainText.amperes(budget.meanA()) + " from "
                                + PlainText.number(budget.balanceRpm().getAsDouble(), 0) + " rpm up"
                        : "The hot alternator never carries the " + PlainText.amperes(budget.meanA()) + " asked of it")
                .orElse("What the alternator can give");
        return new Heading(title, "Hot output against engine speed; the line is the mean load while the engine runs");
    }

    /** A few flash cycles: how far the voltage swings. */
    public Heading flash() {
        DoubleSummaryStatistics node = story.waveform().stream()
                .mapToDouble(WaveformPoint::nodeV)
                .summaryStatistics();
        double fromS = story.waveform().get(0).timeS();
        return new Heading(
                "Flashing swings the voltage between " + PlainText.volts(node.getMin()) + " and "
                        + PlainText.volts(node.getMax()),
                "Close-up " + PlainText.after(fromS) + ", every flash resolved");
    }

    private static String from(double timeS) {
        return timeS < 1 ? "from the start" : "from " + PlainText.time(timeS) + " on";
    }

    private Optional<Event> first(EventKind kind) {
        return story.result().events().stream()
                .filter(event -> event.kind() == kind)
                .findFirst();
    }
}
