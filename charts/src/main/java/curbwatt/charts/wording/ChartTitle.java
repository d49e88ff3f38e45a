package curbwatt.charts.wording;

import curbwatt.charts.run.RunStory;
import curbwatt.engine.budget.LoadBudget;
import curbwatt.engine.event.Event;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.result.LinkSummary;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.vehicle.AuxiliaryBattery;
import curbwatt.engine.vehicle.BusNode;
import curbwatt.engine.vehicle.Vehicle;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Titles that say what a chart shows to be so.
 *
 * @param story the run
 */
public record ChartTitle(RunStory story) {

    /** What ends a circuit's supply. */
    private static final Set<EventKind> DECISIVE = Set.of(
            EventKind.CUTOFF_TRIPPED,
            EventKind.RUN_TIME_LIMIT_REACHED,
            EventKind.FUSE_OPENED,
            EventKind.LOAD_DROPPED_OUT,
            EventKind.VOLTAGE_COLLAPSED);

    /** Smallest mean current that is worth a title (A). */
    private static final double NOTICEABLE_A = 0.5;

    /** Charge that is not worth a word (Ah). */
    private static final double LITTLE_AH = 0.05;

    /** Smallest swing of the voltage that is worth a title (V). */
    private static final double NOTICEABLE_V = 0.005;
    /** Trips within this are the same (s): nobody sees less beside the close-up's marks. */
    private static final double SAME_TRIP_S = 0.02;

    /** Voltage and charge over the scene: what decided, else how much is left. */
    public Heading voltage() {
        String shown = batteries().isPair()
                ? "Voltage of both nodes and state of charge of both batteries, "
                : "Battery voltage and state of charge, ";
        return new Heading(decision(), shown + story.scenario().title());
    }

    private BatteryText batteries() {
        return new BatteryText(story);
    }

    private String decision() {
        RunResult result = story.result();
        if (result.restartTimeS().isPresent()) {
            String refusal = new RestartText(result).refusal();
            return refusal.substring(0, 1).toUpperCase(Locale.ROOT) + refusal.substring(1);
        }
        Optional<Event> decisive = result.events().stream()
                .filter(event -> DECISIVE.contains(event.kind()))
                .findFirst();
        if (decisive.isEmpty()) {
            if (batteries().isPair()) {
                return PlainText.percent(result.endChargeFraction()) + " left in the starter battery and "
                        + PlainText.percent(result.batteries().get(1).endChargeFraction()) + " in the auxiliary "
                        + PlainText.after(result.durationS());
            }
            return PlainText.percent(result.endChargeFraction()) + " charge left " + PlainText.after(result.durationS())
                    + ", voltage never below " + PlainText.volts(result.lowestV());
        }
        Event event = decisive.get();
        String verb = switch (event.kind()) {
            case LOAD_DROPPED_OUT -> " drops out ";
            case VOLTAGE_COLLAPSED -> " collapses ";
            case FUSE_OPENED -> " loses its fuse ";
            default -> " opens ";
        };
        return Places.named(event.subject()) + verb + PlainText.after(event.timeS()) + " "
                + batteries().left(event);
    }

    /** Currents over the scene: whether the alternator carries the load. */
    public Heading balance() {
        return new Heading(
                new BalanceFinding(story).sentence(),
                "Mean currents by circuit, against what alternator and "
                        + batteries().verb("battery", "batteries") + " give");
    }

    /** Current through the link: how much it passes. */
    public Heading link(AuxiliaryBattery auxiliary, LinkSummary link) {
        String back =
                link.toStarterAh() < LITTLE_AH ? "" : ", and " + PlainText.ampereHours(link.toStarterAh()) + " back";
        String title = link.toEquipmentAh() < LITTLE_AH && back.isEmpty()
                ? "Nothing passes " + PlainText.quoted(link.link())
                : PlainText.quoted(link.link()) + " passes " + PlainText.ampereHours(link.toEquipmentAh())
                        + " to the equipment node" + back;
        return new Heading(title, "Mean current towards the equipment node; " + LinkText.settings(auxiliary.link()));
    }

    /** Alternator output over engine speed: from which speed on it carries the load. */
    public Heading alternator() {
        Vehicle vehicle = story.scenario().vehicle();
        List<Phase> running = story.scenario().scene().phases().stream()
                .filter(phase -> phase.mode().isRunning())
                .toList();
        Optional<LoadBudget> heaviest = running.stream()
                .map(phase -> LoadBudget.of(vehicle, phase))
                .filter(budget -> budget.meanA() >= NOTICEABLE_A)
                .max(Comparator.comparing(LoadBudget::meanA));
        boolean hoodKnown = running.stream()
                .anyMatch(phase ->
                        phase.hottestUnderHoodC(vehicle.engine().underHood()).isPresent());
        return new Heading(
                heaviest.map(ChartTitle::carries).orElse("What the alternator can give"),
                "Hot output against engine speed; the line is the load budget while the engine runs"
                        + (hoodKnown ? "; marks at the hottest air under the hood of each phase" : ""));
    }

    private static String carries(LoadBudget budget) {
        String load = PlainText.amperes(budget.meanA());
        return budget.balanceRpm().isPresent()
                ? "The hot alternator carries " + load + " from "
                        + PlainText.number(budget.balanceRpm().getAsDouble(), 0) + " rpm up"
                : "The hot alternator never carries the " + load + " asked of it";
    }

    /** A few flash cycles: how far the voltage swings. */
    public Heading flash() {
        double untilS = first(EventKind.CUTOFF_TRIPPED).map(Event::timeS).orElse(Double.POSITIVE_INFINITY);
        BusNode shown = story.closeUpNode();
        // the loads' going when a contact opens is no flash; the close-up's own trip may come a moment earlier than the
        // run's
        DoubleSummaryStatistics node = story.waveform().stream()
                .filter(point -> point.timeS() < untilS - SAME_TRIP_S
                        || story.waveform().get(0).timeS() >= untilS)
                .mapToDouble(point -> RunStory.nodeV(point, shown))
                .summaryStatistics();
        double fromS = story.waveform().get(0).timeS();
        String title = node.getMax() - node.getMin() < NOTICEABLE_V
                ? "Flashing does not move the voltage, " + PlainText.volts(node.getMax())
                : "Flashing swings the voltage between " + PlainText.volts(node.getMin()) + " and "
                        + PlainText.volts(node.getMax());
        return new Heading(title, "Close-up " + PlainText.after(fromS) + ", every flash resolved");
    }

    private Optional<Event> first(EventKind kind) {
        return story.result().events().stream()
                .filter(event -> event.kind() == kind)
                .findFirst();
    }
}
