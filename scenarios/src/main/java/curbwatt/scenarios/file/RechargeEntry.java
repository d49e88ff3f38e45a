package curbwatt.scenarios.file;

import java.util.List;
import java.util.Optional;

/**
 * How batteries are recharged after the scene.
 *
 * @param place where it stands
 * @param wantedChargePercent state of charge that is wanted (percent)
 * @param stages stages that stay on while recharging
 * @param drivingRpm engine speed on the road (1/min)
 * @param idleSpeedsRpm idle speeds to try (1/min)
 * @param betweenCallsMin time between two calls (min)
 * @param scenesPerDay how many scenes a day has, where there is no roster
 * @param driveBetweenMin drive after each of them (min)
 */
public record RechargeEntry(
        Place place,
        Optional<Double> wantedChargePercent,
        List<String> stages,
        Optional<Double> drivingRpm,
        List<Double> idleSpeedsRpm,
        Optional<Double> betweenCallsMin,
        Optional<Integer> scenesPerDay,
        Optional<Double> driveBetweenMin) {

    /** Takes a missing list as an empty one. */
    public RechargeEntry {
        stages = stages == null ? List.of() : List.copyOf(stages);
        idleSpeedsRpm = idleSpeedsRpm == null ? List.of() : List.copyOf(idleSpeedsRpm);
    }
}
