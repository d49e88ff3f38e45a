package curbwatt.scenarios.assemble;

import curbwatt.engine.scene.DayPlan;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.scene.Roster;
import curbwatt.engine.scene.Scene;
import curbwatt.scenarios.file.DayEntry;
import curbwatt.scenarios.file.RosterEntry;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * From a complete entry and the assembled scene to a roster.
 *
 * @param guarded catches what the engine refuses
 * @param scene where the phases are
 */
record RosterAssembler(Guarded guarded, Scene scene) {
    private static final double LEAST_PARKED_S = 1;

    /** Returns the roster; it starts as the scene does. */
    Roster roster(RosterEntry entry) {
        Phase parked = phase(entry.parked().orElseThrow());
        List<DayPlan> pattern = new ArrayList<>();
        entry.pattern()
                .forEach(day -> pattern.addAll(Collections.nCopies(day.count().orElse(1), day(day, parked))));
        return guarded.build(
                entry.place(),
                () -> new Roster(
                        scene.name(), scene.start(), pattern, entry.days().orElseThrow()));
    }

    private DayPlan day(DayEntry entry, Phase parked) {
        String name = entry.name().orElseThrow();
        List<Phase> phases = unique(entry.phases().stream().map(this::phase).toList());
        double leftS =
                DayPlan.DAY_S - phases.stream().mapToDouble(Phase::durationS).sum();
        return guarded.build(
                entry.place(),
                () -> leftS < LEAST_PARKED_S
                        ? new DayPlan(name, phases)
                        : DayPlan.parkedToItsEnd(name, phases, parked.named(parked.name() + " to midnight")));
    }

    /** A phase that comes again is told apart by a number. */
    private static List<Phase> unique(List<Phase> phases) {
        Map<String, Integer> seen = new HashMap<>();
        return phases.stream()
                .map(phase -> {
                    int time = seen.merge(phase.name(), 1, Integer::sum);
                    return time == 1 ? phase : phase.named(phase.name() + " (" + time + ")");
                })
                .toList();
    }

    private Phase phase(String name) {
        return scene.phases().stream()
                .filter(phase -> phase.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
