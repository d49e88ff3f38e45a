package curbwatt.scenarios.check;

import curbwatt.scenarios.file.DutyEntry;
import curbwatt.scenarios.file.FlashEntry;
import curbwatt.scenarios.file.LoadEntry;
import curbwatt.scenarios.file.Place;
import curbwatt.scenarios.file.RandomDutyEntry;
import curbwatt.scenarios.file.ScenarioFile;
import curbwatt.scenarios.problem.Quoted;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** When loads are on, and how they follow the voltage, is said once and fits into its cycle. */
final class PatternRule implements Rule {

    /**
     * A clock as first met.
     *
     * @param periodMs its period (ms)
     * @param place where that stands
     */
    private record Clock(double periodMs, Place place) {}

    private static final double MOST_RANDOM_FRACTION = 0.9;
    private static final double LEAST_RANDOM_S = 0.01;

    @Override
    public void look(ScenarioFile file, Findings findings) {
        Map<String, Clock> clocks = new HashMap<>();
        file.vehicle()
                .ifPresent(vehicle -> vehicle.circuits()
                        .forEach(circuit -> circuit.loads().forEach(load -> {
                            once(load, findings);
                            load.flash().ifPresent(flash -> {
                                flash(load, flash, findings);
                                clock(load, flash, clocks, findings);
                            });
                            load.duty().ifPresent(duty -> duty(load, duty, findings));
                            load.randomDuty().ifPresent(duty -> randomDuty(duty, findings));
                            dropOut(load, findings);
                        })));
    }

    private static void once(LoadEntry load, Findings findings) {
        List<String> patterns = new ArrayList<>();
        load.flash().ifPresent(flash -> patterns.add("flash"));
        load.duty().ifPresent(duty -> patterns.add("duty"));
        load.randomDuty().ifPresent(duty -> patterns.add("randomDuty"));
        load.steady().ifPresent(steady -> patterns.add("steady"));
        if (patterns.size() > 1) {
            findings.error(
                    load.place().key(patterns.get(1)),
                    "The load has " + patterns.size() + " patterns at once: " + String.join(", ", patterns) + ".",
                    "Keep one of them.");
        }
        if (load.behaviour().isPresent() && load.voltageExponent().isPresent()) {
            findings.error(
                    load.place().key("voltageExponent"),
                    "behaviour and voltageExponent both say how the current follows the voltage.",
                    "Keep one of them.");
        }
        Place sync = load.place().key("sync");
        if (findings.isWritten(sync) && (load.flash().isEmpty() || load.count().orElse(1) == 1)) {
            findings.warning(
                    sync,
                    "sync has no effect: "
                            + (load.flash().isEmpty() ? "the load does not flash." : "there is one head alone."),
                    "Remove it, or add " + (load.flash().isEmpty() ? "a flash." : "a count above 1."));
        }
    }

    private static void flash(LoadEntry load, FlashEntry flash, Findings findings) {
        Place place = load.place().key("flash");
        if (flash.periodMs().isEmpty() || findings.isTouched(place.key("onMs"))) {
            return;
        }
        double periodMs = flash.periodMs().get();
        double earliestMs = 0;
        for (int i = 0; i < flash.onMs().size(); i++) {
            double fromMs = flash.onMs().get(i).get(0);
            double toMs = flash.onMs().get(i).get(1);
            Place interval = place.key("onMs").item(i);
            String spelt = "The interval [" + Shown.number(fromMs) + ", " + Shown.number(toMs) + "] ms ";
            if (toMs <= fromMs) {
                findings.error(interval, spelt + "ends before it begins.", "Write [from, to], to above from.");
            } else if (toMs > periodMs) {
                findings.error(
                        interval,
                        spelt + "runs past the period, " + Shown.number(periodMs) + " ms.",
                        "Let it end by " + Shown.number(periodMs) + " ms, or lengthen periodMs.");
            } else if (fromMs < earliestMs) {
                findings.error(
                        interval,
                        spelt + "begins before the one before it has ended, at " + Shown.number(earliestMs) + " ms.",
                        "Put intervals in order, without overlap.");
            }
            earliestMs = Math.max(earliestMs, toMs);
        }
        if (flash.phaseMs().orElse(0.0) > periodMs) {
            findings.error(
                    place.key("phaseMs"),
                    "phaseMs is " + Shown.number(flash.phaseMs().get()) + " ms, longer than the period, "
                            + Shown.number(periodMs) + " ms.",
                    "Allowed is 0 to " + Shown.number(periodMs) + " ms.");
        }
    }

    private static void clock(LoadEntry load, FlashEntry flash, Map<String, Clock> clocks, Findings findings) {
        if (flash.clock().isEmpty() || flash.periodMs().isEmpty()) {
            return;
        }
        Place place = load.place().key("flash").key("periodMs");
        Clock clock = new Clock(flash.periodMs().get(), place);
        Clock first = clocks.putIfAbsent(flash.clock().get(), clock);
        if (first != null && first.periodMs() != clock.periodMs()) {
            findings.error(
                    place,
                    "The clock " + Quoted.name(flash.clock().get()) + " has two periods: "
                            + Shown.number(clock.periodMs())
                            + " ms here, " + Shown.number(first.periodMs()) + " ms in line "
                            + findings.line(first.place())
                            + ".",
                    "Loads on one clock state one period; give this one a clock of its own.");
        }
    }

    private static void duty(LoadEntry load, DutyEntry duty, Findings findings) {
        if (duty.everyS().isEmpty()) {
            return;
        }
        Place place = load.place().key("duty");
        notAbove(place.key("onS"), duty.onS().orElse(0.0), duty.everyS().get(), findings);
        notAbove(place.key("offsetS"), duty.offsetS().orElse(0.0), duty.everyS().get(), findings);
    }

    private static void randomDuty(RandomDutyEntry duty, Findings findings) {
        double everyS = duty.everyS().orElse(Double.MAX_VALUE);
        if (duty.onS().orElse(0.0) > MOST_RANDOM_FRACTION * everyS || everyS < LEAST_RANDOM_S) {
            findings.error(
                    duty.place().key("onS"),
                    "onS is " + Shown.number(duty.onS().orElse(0.0)) + " s of every " + Shown.number(everyS) + " s.",
                    "Random on-times fill nine tenths of the time at most, and come every 0.01 s at most.");
        }
    }

    private static void notAbove(Place place, double valueS, double everyS, Findings findings) {
        if (valueS > everyS) {
            findings.error(
                    place,
                    place.name() + " is " + Shown.number(valueS) + " s, longer than everyS, " + Shown.number(everyS)
                            + " s.",
                    "Allowed is up to " + Shown.number(everyS) + " s.");
        }
    }

    private static void dropOut(LoadEntry load, Findings findings) {
        double dropOutV = load.dropOutV().orElse(0.0);
        double returnV = load.returnV().orElse(dropOutV);
        if (returnV < dropOutV) {
            Place place = load.place().key("returnV");
            findings.error(
                    findings.isWritten(place) ? place : load.place().key("dropOutV"),
                    "returnV is " + Shown.number(returnV) + " V, below dropOutV, " + Shown.number(dropOutV) + " V.",
                    "A load comes back at or above the voltage at which it fell silent.");
        }
    }
}
