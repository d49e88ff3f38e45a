package curbwatt.scenarios.assemble;

import curbwatt.engine.battery.BatteryParameters;
import curbwatt.engine.battery.Chemistry;
import curbwatt.engine.battery.label.BatteryLabel;
import curbwatt.engine.battery.label.FittedLabel;
import curbwatt.engine.battery.label.LfpFit;
import curbwatt.engine.battery.label.LfpLabel;
import curbwatt.scenarios.check.LabelFits;
import curbwatt.scenarios.file.BatteryEntry;
import curbwatt.scenarios.file.ChemistryWord;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * From the figures of a label to the battery as new.
 *
 * @param assumptions told of what is estimated
 * @param fits fits labels
 */
record BatteryFit(Assumptions assumptions, LabelFits fits) {
    private static final double OHM_PER_MILLIOHM = 1e-3;

    /**
     * Returns the battery.
     *
     * @param role what sentences call it
     */
    BatteryParameters parameters(String role, BatteryEntry entry) {
        return entry.chemistry().orElseThrow().isLead() ? lead(role, entry) : ironPhosphate(entry);
    }

    private BatteryParameters lead(String role, BatteryEntry entry) {
        boolean agm = entry.chemistry().orElseThrow() == ChemistryWord.AGM;
        FittedLabel fitted = fits.of(new BatteryLabel(
                agm ? Chemistry.AGM : Chemistry.FLOODED,
                entry.c20Ah().orElseThrow(),
                optional(entry.reserveMin()),
                optional(entry.coldCrankingA())));
        assumptions.estimated(role, fitted);
        return fitted.parameters();
    }

    private BatteryParameters ironPhosphate(BatteryEntry entry) {
        return LfpFit.of(LfpLabel.ofTwentyHours(
                entry.capacityAh().orElseThrow(), entry.resistanceMilliohm().orElseThrow() * OHM_PER_MILLIOHM));
    }

    private static OptionalDouble optional(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }
}
