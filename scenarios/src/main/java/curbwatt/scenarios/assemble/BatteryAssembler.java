package curbwatt.scenarios.assemble;

import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.BatteryCondition;
import curbwatt.engine.battery.BatteryParameters;
import curbwatt.engine.protection.PackProtection;
import curbwatt.engine.vehicle.BatteryInstallation;
import curbwatt.scenarios.check.LabelFits;
import curbwatt.scenarios.file.BatteryEntry;
import java.util.Optional;

/**
 * From the figures of a label to a battery.
 *
 * @param guarded catches what the engine refuses
 * @param assumptions told of what is estimated
 * @param fits fits labels
 */
record BatteryAssembler(Guarded guarded, Assumptions assumptions, LabelFits fits) {
    private static final double HOUR_S = 3600;
    private static final double PERCENT = 100;
    private static final double MOST_CONTINUOUS_A = 1000;

    /**
     * Returns the battery in its place.
     *
     * @param role what sentences call it
     * @param name what events and tables call it
     */
    BatteryInstallation installation(String role, String name, BatteryEntry entry) {
        return guarded.build(entry.place(), () -> {
            BatteryParameters parameters = new BatteryFit(assumptions, fits).parameters(role, entry);
            return new BatteryInstallation(
                    name,
                    new Battery(parameters, condition(entry)),
                    entry.thermalTimeConstantH()
                            .map(hours -> hours * HOUR_S)
                            .orElse(BatteryInstallation.USUAL_THERMAL_TIME_CONSTANT_S),
                    entry.inEngineSpace().orElse(false));
        });
    }

    /** Returns the protection usual inside an iron-phosphate pack; lead has none. */
    Optional<PackProtection> protection(String role, BatteryEntry entry) {
        if (entry.chemistry().orElseThrow().isLead()) {
            return Optional.empty();
        }
        double capacityAh = entry.capacityAh().orElseThrow();
        double continuousA = entry.continuousA().orElse(Math.min(capacityAh, MOST_CONTINUOUS_A));
        if (entry.continuousA().isEmpty()) {
            assumptions.add(
                    "The " + role + " is taken to be rated for a continuous current of its capacity in one hour,"
                            + " 1000 A at most; its protection parts it from the vehicle above twice that.");
        }
        assumptions.add("The protection inside the " + role + " has the settings usual for such a pack.");
        return guarded.build(entry.place(), () -> Optional.of(PackProtection.usual(capacityAh, continuousA)));
    }

    private static BatteryCondition condition(BatteryEntry entry) {
        return new BatteryCondition(
                entry.capacityHealthPercent().map(percent -> percent / PERCENT).orElse(1.0),
                entry.resistanceGrowthFactor().orElse(1.0),
                entry.selfDischargePercentPerMonth()
                        .map(percent -> percent / PERCENT)
                        .orElse(BatteryCondition.USUAL_SELF_DISCHARGE_PER_MONTH_FRACTION));
    }
}
