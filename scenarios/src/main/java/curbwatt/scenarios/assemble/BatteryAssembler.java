package curbwatt.scenarios.assemble;

import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.BatteryCondition;
import curbwatt.engine.battery.BatteryParameters;
import curbwatt.engine.battery.Chemistry;
import curbwatt.engine.battery.label.BatteryLabel;
import curbwatt.engine.battery.label.FittedLabel;
import curbwatt.engine.battery.label.LabelFit;
import curbwatt.engine.battery.label.LfpFit;
import curbwatt.engine.battery.label.LfpLabel;
import curbwatt.engine.vehicle.BatteryInstallation;
import curbwatt.scenarios.file.BatteryEntry;
import curbwatt.scenarios.file.ChemistryWord;
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
    private static final double OHM_PER_MILLIOHM = 1e-3;

    /**
     * Returns the battery in its place.
     *
     * @param role what sentences call it
     * @param name what events and tables call it
     */
    BatteryInstallation installation(String role, String name, BatteryEntry entry) {
        return guarded.build(entry.place(), () -> {
            BatteryParameters parameters =
                    entry.chemistry().orElseThrow().isLead() ? lead(role, entry) : ironPhosphate(role, entry);
            return new BatteryInstallation(
                    name,
                    new Battery(parameters, condition(entry)),
                    entry.thermalTimeConstantH()
                            .map(hours -> hours * HOUR_S)
                            .orElse(BatteryInstallation.USUAL_THERMAL_TIME_CONSTANT_S));
        });
    }

    private BatteryParameters lead(String role, BatteryEntry entry) {
        boolean agm = entry.chemistry().orElseThrow() == ChemistryWord.AGM;
        FittedLabel fitted = LabelFit.of(new BatteryLabel(
                agm ? Chemistry.AGM : Chemistry.FLOODED,
                entry.c20Ah().orElseThrow(),
                optional(entry.reserveMin()),
                optional(entry.coldCrankingA())));
        assumptions.estimated(role, fitted);
        return fitted.parameters();
    }

    private BatteryParameters ironPhosphate(String role, BatteryEntry entry) {
        assumptions.add("What the protection inside the " + role + " would do is left out: it neither refuses charge in"
                + " the cold nor parts from the vehicle when empty.");
        return LfpFit.of(LfpLabel.ofTwentyHours(
                entry.capacityAh().orElseThrow(), entry.resistanceMilliohm().orElseThrow() * OHM_PER_MILLIOHM));
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
