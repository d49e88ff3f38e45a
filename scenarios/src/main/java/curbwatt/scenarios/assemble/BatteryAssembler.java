package curbwatt.scenarios.assemble;

import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.BatteryCondition;
import curbwatt.engine.battery.Chemistry;
import curbwatt.engine.battery.label.BatteryLabel;
import curbwatt.engine.battery.label.FittedLabel;
import curbwatt.engine.battery.label.LabelFit;
import curbwatt.engine.vehicle.BatteryInstallation;
import curbwatt.scenarios.file.BatteryEntry;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * From the figures of a label to a battery.
 *
 * @param guarded catches what the engine refuses
 * @param assumptions told of what is estimated
 */
record BatteryAssembler(Guarded guarded, Assumptions assumptions) {
    private static final double HOUR_S = 3600;
    private static final double PERCENT = 100;

    /**
     * Returns the battery in its place.
     *
     * @param role what sentences call it
     * @param name what events and tables call it
     */
    BatteryInstallation installation(String role, String name, BatteryEntry entry) {
        return guarded.build(entry.place(), () -> {
            FittedLabel fitted = LabelFit.of(label(entry));
            assumptions.estimated(role, fitted);
            return new BatteryInstallation(
                    name,
                    new Battery(fitted.parameters(), condition(entry)),
                    entry.thermalTimeConstantH()
                            .map(hours -> hours * HOUR_S)
                            .orElse(BatteryInstallation.USUAL_THERMAL_TIME_CONSTANT_S));
        });
    }

    private static BatteryLabel label(BatteryEntry entry) {
        Chemistry chemistry = switch (entry.chemistry().orElseThrow()) {
            case FLOODED -> Chemistry.FLOODED;
            case AGM -> Chemistry.AGM;
        };
        return new BatteryLabel(
                chemistry, entry.c20Ah().orElseThrow(), optional(entry.reserveMin()), optional(entry.coldCrankingA()));
    }

    private static BatteryCondition condition(BatteryEntry entry) {
        return new BatteryCondition(
                entry.capacityHealthPercent().map(percent -> percent / PERCENT).orElse(1.0),
                entry.resistanceGrowthFactor().orElse(1.0),
                entry.selfDischargePercentPerMonth()
                        .map(percent -> percent / PERCENT)
                        .orElse(BatteryCondition.USUAL_SELF_DISCHARGE_PER_MONTH_FRACTION));
    }

    private static OptionalDouble optional(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }
}
