package curbwatt.engine.control;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * A cutoff with steps before it: one reading, several contacts.
 *
 * <p>Steps come in the order in which they are meant to act: each lies lower than the one before it, or at the same
 * level with a longer delay, and the cutoff itself comes last. Each contact closes by its own rule.
 *
 * @param last the cutoff; its sense point, filter and sensor error serve the steps too
 * @param steps what is shed before, in order; may be empty
 * @param minimumContinuous names of circuits that are never shed, neither by a step nor by the cutoff
 */
public record StagedCutoff(LowVoltageCutoff last, List<SheddingStep> steps, Set<String> minimumContinuous) {

    /** Refuses steps out of order, names and circuits used twice, and shedding of the minimum continuous load. */
    public StagedCutoff {
        Objects.requireNonNull(last, "last");
        steps = List.copyOf(steps);
        minimumContinuous = Set.copyOf(minimumContinuous);
        Set<String> names = new HashSet<>(Set.of(last.name()));
        Set<String> taken = new HashSet<>();
        for (int i = 0; i < steps.size(); i++) {
            SheddingStep step = steps.get(i);
            if (!names.add(step.name())) {
                throw new IllegalArgumentException("name '" + step.name() + "' stands twice in cutoff '" + last.name()
                        + "'; each step needs a name of its own");
            }
            if (i + 1 < steps.size()) {
                SheddingStep next = steps.get(i + 1);
                requireOrder(step, next.name(), next.levelV(), next.delayS());
            } else {
                requireOrder(step, last.name(), last.tripV(), last.tripDelayS());
            }
            take(taken, step.circuits(), step.name(), minimumContinuous);
        }
        take(taken, last.circuits(), last.name(), minimumContinuous);
    }

    /** A cutoff without steps. */
    public static StagedCutoff of(LowVoltageCutoff cutoff) {
        return new StagedCutoff(cutoff, List.of(), Set.of());
    }

    /**
     * The steps and the cutoff as devices of their own, the steps first: they sense at one place through one filter,
     * so that
     * their readings are one.
     */
    public List<LowVoltageCutoff> devices() {
        List<LowVoltageCutoff> devices = new ArrayList<>();
        for (SheddingStep step : steps) {
            devices.add(new LowVoltageCutoff(
                    step.name(),
                    last.sense(),
                    last.filterTimeConstantS(),
                    last.sensorErrorV(),
                    OptionalDouble.empty(),
                    step.levelV(),
                    step.delayS(),
                    step.reclose(),
                    OptionalDouble.empty(),
                    step.circuits()));
        }
        devices.add(last);
        return List.copyOf(devices);
    }

    /** Every circuit that a step or the cutoff can disconnect. */
    public Set<String> circuits() {
        Set<String> all = new HashSet<>(last.circuits());
        steps.forEach(step -> all.addAll(step.circuits()));
        return Set.copyOf(all);
    }

    private static void requireOrder(SheddingStep step, String nextName, double nextV, double nextDelayS) {
        boolean earlier = nextV < step.levelV() || (nextV == step.levelV() && nextDelayS > step.delayS());
        if (!earlier) {
            throw new IllegalArgumentException("step '" + step.name() + "' at " + step.levelV() + " V for "
                    + step.delayS() + " s comes before '" + nextName + "' at " + nextV + " V for " + nextDelayS
                    + " s; a later step must lie lower, or as low with a longer delay");
        }
    }

    private static void take(Set<String> taken, Set<String> circuits, String by, Set<String> minimumContinuous) {
        circuits.stream().sorted().forEach(circuit -> {
            if (minimumContinuous.contains(circuit)) {
                throw new IllegalArgumentException("circuit '" + circuit + "' belongs to the minimum continuous load; '"
                        + by + "' must not shed it");
            }
            if (!taken.add(circuit)) {
                throw new IllegalArgumentException(
                        "circuit '" + circuit + "' is shed twice, the second time by '" + by + "'");
            }
        });
    }
}
