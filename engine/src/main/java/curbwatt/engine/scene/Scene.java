package curbwatt.engine.scene;

import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * What the vehicle goes through.
 *
 * @param name as the user calls it
 * @param start state of the battery at the start
 * @param phases one after the other, at least one, names unique
 */
public record Scene(String name, InitialState start, List<Phase> phases) {

    /** Refuses no phase, and two of one name. */
    public Scene {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(start, "start");
        phases = List.copyOf(phases);
        if (phases.isEmpty()) {
            throw new IllegalArgumentException("phases is empty; a scene needs at least one");
        }
        Set<String> names = new HashSet<>();
        for (Phase phase : phases) {
            if (!names.add(phase.name())) {
                throw new IllegalArgumentException("phases has two of the name '" + phase.name() + "'");
            }
        }
    }

    /** Length of all phases (s). */
    public double durationS() {
        return phases.stream().mapToDouble(Phase::durationS).sum();
    }

    /** Start of a phase, counted from the scene's start (s). */
    public double startS(int phaseIndex) {
        return phases.subList(0, phaseIndex).stream()
                .mapToDouble(Phase::durationS)
                .sum();
    }

    /** The same scene with other phases. */
    public Scene withPhases(List<Phase> others) {
        return new Scene(name, start, others);
    }

    /** The same scene from another start. */
    public Scene from(InitialState other) {
        return new Scene(name, other, phases);
    }
}
