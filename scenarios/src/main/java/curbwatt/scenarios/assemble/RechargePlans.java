package curbwatt.scenarios.assemble;

import curbwatt.engine.study.recharge.CallPattern;
import curbwatt.engine.study.recharge.RechargePlan;
import curbwatt.scenarios.file.RechargeEntry;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** From an entry to how batteries are recharged. */
final class RechargePlans {
    private static final double PERCENT = 100;
    private static final double MINUTE_S = 60;

    private RechargePlans() {}

    /** Returns the plan, with the usual for what is left out. */
    static RechargePlan of(RechargeEntry entry) {
        return new RechargePlan(
                optional(entry.wantedChargePercent().map(percent -> percent / PERCENT)),
                entry.stages().isEmpty() ? Optional.empty() : Optional.of(Set.copyOf(entry.stages())),
                optional(entry.drivingRpm()),
                entry.idleSpeedsRpm(),
                entry.betweenCallsMin().map(min -> min * MINUTE_S).orElse(RechargePlan.USUAL_BETWEEN_CALLS_S),
                entry.scenesPerDay()
                        .flatMap(
                                scenes -> entry.driveBetweenMin().map(min -> new CallPattern(scenes, min * MINUTE_S))));
    }

    private static OptionalDouble optional(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }
}
