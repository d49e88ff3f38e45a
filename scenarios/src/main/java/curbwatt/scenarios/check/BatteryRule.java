package curbwatt.scenarios.check;

import curbwatt.engine.battery.Chemistry;
import curbwatt.engine.battery.label.BatteryLabel;
import curbwatt.scenarios.file.BatteryEntry;
import curbwatt.scenarios.file.ChemistryWord;
import curbwatt.scenarios.file.Place;
import curbwatt.scenarios.file.ScenarioFile;
import java.util.OptionalDouble;

/**
 * Figures of a battery's label that contradict each other.
 *
 * @param fits tries labels
 */
record BatteryRule(LabelFits fits) implements Rule {
    /** Minutes at 25 A for each ampere-hour, were the whole 20 h charge to be had at that rate. */
    private static final double MOST_MIN_PER_AH = 60.0 / 25;

    @Override
    public void look(ScenarioFile file, Findings findings) {
        file.batteries().forEach(battery -> look(battery, findings));
    }

    private void look(BatteryEntry battery, Findings findings) {
        if (battery.chemistry().filter(ChemistryWord::isLead).isEmpty()
                || battery.c20Ah().isEmpty()) {
            return;
        }
        Place reserve = findings.isWritten(battery.place().key("reserveMin"))
                ? battery.place().key("reserveMin")
                : battery.place().key("c20Ah");
        double most = MOST_MIN_PER_AH * battery.c20Ah().get();
        if (battery.reserveMin().isPresent() && battery.reserveMin().get() >= most) {
            findings.error(
                    reserve,
                    "reserveMin is " + Shown.number(battery.reserveMin().get()) + " min, more charge than c20Ah, "
                            + Shown.number(battery.c20Ah().get()) + " Ah, can hold.",
                    "At 25 A it must stay below 2.4 min for each Ah: " + Shown.number(most)
                            + " min. Check both figures.");
            return;
        }
        fit(battery, reserve, findings);
    }

    private void fit(BatteryEntry battery, Place reserve, Findings findings) {
        try {
            fits.of(label(battery));
        } catch (IllegalArgumentException e) {
            boolean cranking = e.getMessage().startsWith("coldCrankingA");
            boolean written = findings.isWritten(battery.place().key("coldCrankingA"));
            findings.error(
                    cranking && written ? battery.place().key("coldCrankingA") : reserve,
                    "The figures of this label contradict each other: " + e.getMessage() + ".",
                    "Check the label; is one of its figures for another kind of test?");
        }
    }

    private static BatteryLabel label(BatteryEntry battery) {
        return new BatteryLabel(
                battery.chemistry().get() == ChemistryWord.AGM ? Chemistry.AGM : Chemistry.FLOODED,
                battery.c20Ah().get(),
                optional(battery.reserveMin()),
                optional(battery.coldCrankingA()));
    }

    private static OptionalDouble optional(java.util.Optional<Double> value) {
        return value.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }
}
