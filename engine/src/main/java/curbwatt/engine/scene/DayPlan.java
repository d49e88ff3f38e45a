package curbwatt.engine.scene;

import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.powertrain.EngineSpeed;
import curbwatt.engine.quantity.Require;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * Twenty-four hours of a vehicle's duty: drives, scenes, parked hours, one after the other.
 *
 * @param name as the user calls it, e.g. early shift
 * @param phases in order, names unique within the day, 24 h together
 */
public record DayPlan(String name, List<Phase> phases) {

    /** Length of a day (s). */
    public static final double DAY_S = 86400;

    private static final double ROUNDING_S = 1e-3;

    /** Refuses two phases of one name and phases that do not add up to 24 h. */
    public DayPlan {
        Objects.requireNonNull(name, "name");
        phases = List.copyOf(phases);
        Set<String> names = new HashSet<>();
        for (Phase phase : phases) {
            if (!names.add(phase.name())) {
                throw new IllegalArgumentException(
                        "day '" + name + "' has two phases of the name '" + phase.name() + "'");
            }
        }
        Require.inside("length of day '" + name + "'", lengthS(phases), DAY_S - ROUNDING_S, DAY_S + ROUNDING_S, "s");
    }

    /**
     * A day that is parked from its last phase to its end.
     *
     * @param parkedName name of the phase that fills the day
     * @param air air temperature while parked
     * @param stages stages on while parked: key-off draw
     * @throws IllegalArgumentException if less than a second is left to park in
     */
    public static DayPlan parkedToItsEnd(
            String name, List<Phase> phases, String parkedName, AirTemperature air, Set<String> stages) {
        return parkedToItsEnd(
                name, phases, new Phase(parkedName, EngineMode.PARKED, DAY_S, air, EngineSpeed.constant(0), stages));
    }

    /** A day that is parked from its last phase to its end, in a phase as it is given but for its length. */
    public static DayPlan parkedToItsEnd(String name, List<Phase> phases, Phase parked) {
        double leftS = DAY_S - lengthS(phases);
        Require.inside("time left to park in on day '" + name + "'", leftS, 1, DAY_S, "s");
        List<Phase> all = new ArrayList<>(phases);
        all.add(parked.lasting(leftS));
        return new DayPlan(name, all);
    }

    private static double lengthS(List<Phase> phases) {
        return phases.stream().mapToDouble(Phase::durationS).sum();
    }
}
