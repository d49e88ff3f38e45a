package curbwatt.engine.study.recharge;

import curbwatt.engine.powertrain.EngineMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What the study found.
 *
 * @param plan what was asked
 * @param stages stages that stayed on while recharging
 * @param airC air meanwhile (°C)
 * @param leftOutS drives at the scene's end that were left out (s)
 * @param ways driving, then each idle speed, rising
 * @param lowestEverRpm lowest idle speed that gives all back within a day (1/min); empty: none up to 2000 /min does
 * @param lowestInTimeRpm lowest that does so between two calls (1/min); empty: none does
 * @param shifts whether the shift pattern keeps up; empty: there is none
 */
public record RechargeResult(
        RechargePlan plan,
        Set<String> stages,
        double airC,
        double leftOutS,
        List<WayBack> ways,
        OptionalDouble lowestEverRpm,
        OptionalDouble lowestInTimeRpm,
        Optional<ShiftAnswer> shifts) {

    /** Copies the lists. */
    public RechargeResult {
        Objects.requireNonNull(plan, "plan");
        stages = Set.copyOf(stages);
        ways = List.copyOf(ways);
        Objects.requireNonNull(lowestEverRpm, "lowestEverRpm");
        Objects.requireNonNull(lowestInTimeRpm, "lowestInTimeRpm");
        Objects.requireNonNull(shifts, "shifts");
    }

    /** What driving gives back. */
    public WayBack driving() {
        return ways.get(0);
    }

    /** What each idle speed gives back. */
    public List<WayBack> idling() {
        return ways.stream()
                .filter(way -> way.way().mode() == EngineMode.IDLING)
                .toList();
    }

    /** What each battery lacks. */
    public List<Missing> missing() {
        return driving().missing();
    }

    /** What all lack together (Ah). */
    public double missingAh() {
        return driving().missingAh();
    }

    /** The ways in groups that give the charge back as fast as each other; driving is a group of its own. */
    public List<List<WayBack>> groups() {
        List<List<WayBack>> groups = new ArrayList<>();
        groups.add(List.of(driving()));
        for (WayBack way : idling()) {
            List<WayBack> last = groups.get(groups.size() - 1);
            if (groups.size() > 1 && last.get(0).isAsFastAs(way)) {
                groups.set(
                        groups.size() - 1,
                        Stream.concat(last.stream(), Stream.of(way)).toList());
            } else {
                groups.add(List.of(way));
            }
        }
        return List.copyOf(groups);
    }
}
