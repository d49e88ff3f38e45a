package curbwatt.engine.study.recharge;

import curbwatt.engine.quantity.Require;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * How batteries are recharged after the scene, and how soon they are wanted.
 *
 * @param wantedFraction state of charge that is wanted; empty: that at the scene's start
 * @param stages stages that stay on while recharging; empty: those of the scene's last drive, or of its last phase
 * @param drivingRpm engine speed on the road (1/min); empty: the mean of the scene's last drive
 * @param idleRpms idle speeds to try (1/min), rising; empty: usual ones
 * @param betweenCallsS time between two calls (s), 60 … one day
 * @param pattern how scenes follow each other where there is no roster; empty: that is not looked at
 */
public record RechargePlan(
        OptionalDouble wantedFraction,
        Optional<Set<String>> stages,
        OptionalDouble drivingRpm,
        List<Double> idleRpms,
        double betweenCallsS,
        Optional<CallPattern> pattern) {

    /** Two hours between calls; our judgement. */
    public static final double USUAL_BETWEEN_CALLS_S = 7200;

    /** Refuses figures out of range and speeds that do not rise. */
    public RechargePlan {
        Objects.requireNonNull(drivingRpm, "drivingRpm");
        Objects.requireNonNull(pattern, "pattern");
        wantedFraction.ifPresent(wanted -> Require.inside("wantedFraction", wanted, 0.05, 1, ""));
        drivingRpm.ifPresent(rpm -> Require.inside("drivingRpm", rpm, LeastStep.LEAST_RPM, 6000, "/min"));
        stages = stages.map(Set::copyOf);
        idleRpms = List.copyOf(idleRpms);
        for (int i = 0; i < idleRpms.size(); i++) {
            Require.inside("idleRpms", idleRpms.get(i), LeastStep.LEAST_RPM, LeastStep.MOST_RPM, "/min");
            if (i > 0 && idleRpms.get(i) <= idleRpms.get(i - 1)) {
                throw new IllegalArgumentException(
                        "idleRpms must rise: " + idleRpms.get(i) + " follows " + idleRpms.get(i - 1));
            }
        }
        Require.inside("betweenCallsS", betweenCallsS, 60, 86400, "s");
    }

    /** What is usual. */
    public static RechargePlan usual() {
        return new RechargePlan(
                OptionalDouble.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                List.of(),
                USUAL_BETWEEN_CALLS_S,
                Optional.empty());
    }
}
