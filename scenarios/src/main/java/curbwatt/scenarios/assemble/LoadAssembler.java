package curbwatt.scenarios.assemble;

import curbwatt.engine.load.DropOut;
import curbwatt.engine.load.FlashClock;
import curbwatt.engine.load.Inrush;
import curbwatt.engine.load.Load;
import curbwatt.engine.load.LoadPattern;
import curbwatt.engine.load.OnInterval;
import curbwatt.scenarios.file.BehaviourWord;
import curbwatt.scenarios.file.FlashEntry;
import curbwatt.scenarios.file.LoadEntry;
import curbwatt.scenarios.file.RandomDutyEntry;
import curbwatt.scenarios.file.SyncWord;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * From a load entry to the engine's loads. Heads that flash together become one load of all their current; halves that
 * alternate become two; heads on clocks of their own become one each.
 *
 * @param guarded catches what the engine refuses
 */
record LoadAssembler(Guarded guarded) {
    private static final double USUAL_RATED_V = 12.8;

    /** Farthest that a head's own clock is off, as a share of the period: common practice, no published source. */
    private static final double CLOCK_SPREAD_FRACTION = 0.01;

    /** Returns the loads that an entry stands for. */
    List<Load> loads(LoadEntry entry) {
        return guarded.build(entry.place(), () -> expanded(entry));
    }

    private static List<Load> expanded(LoadEntry entry) {
        String name = entry.name().orElseThrow();
        int count = entry.count().orElse(1);
        if (entry.flash().isEmpty() || count == 1) {
            return List.of(load(entry, name, count, pattern(entry, name, count)));
        }
        FlashEntry flash = entry.flash().get();
        return switch (entry.sync().orElse(SyncWord.SIMULTANEOUS)) {
            case SIMULTANEOUS -> List.of(load(entry, name, count, flashing(flash, name, 1, 0)));
            case ALTERNATING -> alternating(entry, flash, name, count);
            case OWN_CLOCKS ->
                IntStream.range(0, count)
                        .mapToObj(i -> ownClock(entry, flash, name, i, count))
                        .toList();
        };
    }

    private static List<Load> alternating(LoadEntry entry, FlashEntry flash, String name, int count) {
        int first = (count + 1) / 2;
        return List.of(
                load(entry, some(name, 1, first, count), first, flashing(flash, name, 1, 0)),
                load(entry, some(name, first + 1, count, count), count - first, flashing(flash, name, 1, 0.5)));
    }

    private static Load ownClock(LoadEntry entry, FlashEntry flash, String name, int index, int count) {
        String own = some(name, index + 1, index + 1, count);
        double stretchFactor = 1 + CLOCK_SPREAD_FRACTION * (2.0 * index / (count - 1) - 1);
        return load(entry, own, 1, flashing(withoutClock(flash), own, stretchFactor, 0));
    }

    private static String some(String name, int from, int to, int count) {
        return name + " " + from + (from == to ? "" : " to " + to) + " of " + count;
    }

    private static FlashEntry withoutClock(FlashEntry flash) {
        return new FlashEntry(flash.place(), flash.periodMs(), flash.onMs(), flash.phaseMs(), Optional.empty());
    }

    private static LoadPattern pattern(LoadEntry entry, String name, int count) {
        if (entry.flash().isPresent()) {
            return flashing(entry.flash().get(), name, 1, 0);
        }
        if (entry.randomDuty().isPresent()) {
            RandomDutyEntry duty = entry.randomDuty().get();
            return new LoadPattern.RandomDuty(
                    duty.onS().orElseThrow(),
                    duty.everyS().orElseThrow(),
                    count * duty.betweenCurrentA().orElse(0.0),
                    duty.seed().orElseThrow());
        }
        return entry.duty()
                .<LoadPattern>map(duty -> new LoadPattern.Duty(
                        duty.onS().orElseThrow(),
                        duty.everyS().orElseThrow(),
                        duty.offsetS().orElse(0.0),
                        count * duty.betweenCurrentA().orElse(0.0)))
                .orElseGet(LoadPattern.Continuous::new);
    }

    private static LoadPattern flashing(FlashEntry flash, String owner, double stretchFactor, double shiftFraction) {
        double periodMs = stretchFactor * flash.periodMs().orElseThrow();
        FlashClock clock = new FlashClock(flash.clock().orElse("clock of " + owner), periodMs);
        List<OnInterval> intervals = flash.onMs().stream()
                .map(ends ->
                        new OnInterval(stretchFactor * ends.get(0), Math.min(periodMs, stretchFactor * ends.get(1))))
                .toList();
        double phaseMs = (stretchFactor * flash.phaseMs().orElse(0.0) + shiftFraction * periodMs) % periodMs;
        return new LoadPattern.Flashing(clock, intervals, phaseMs);
    }

    private static Load load(LoadEntry entry, String name, int heads, LoadPattern pattern) {
        double exponent = entry.voltageExponent()
                .orElseGet(() ->
                        entry.behaviour().orElse(BehaviourWord.CONSTANT_POWER).exponent());
        return new Load(
                name,
                heads * entry.ratedCurrentA().orElseThrow(),
                entry.ratedVoltageV().orElse(USUAL_RATED_V),
                exponent,
                heads * entry.standbyCurrentA().orElse(0.0),
                dropOut(entry),
                pattern,
                Set.copyOf(entry.stages()),
                entry.inrush()
                        .map(inrush -> new Inrush(
                                inrush.multipleFactor().orElseThrow(),
                                inrush.lastsS().orElseThrow()))
                        .orElseGet(Inrush::none),
                heads);
    }

    private static DropOut dropOut(LoadEntry entry) {
        double dropOutV = entry.dropOutV().orElse(0.0);
        if (dropOutV == 0) {
            return DropOut.never();
        }
        return new DropOut(
                dropOutV,
                entry.returnV().orElse(dropOutV + DropOut.USUAL_HYSTERESIS_V),
                entry.returnDelayS().orElse(DropOut.USUAL_RETURN_DELAY_S));
    }
}
