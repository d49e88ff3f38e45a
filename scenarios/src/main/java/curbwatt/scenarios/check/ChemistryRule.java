package curbwatt.scenarios.check;

import curbwatt.scenarios.file.BatteryEntry;
import curbwatt.scenarios.file.ChemistryWord;
import curbwatt.scenarios.file.Place;
import curbwatt.scenarios.file.ScenarioFile;
import curbwatt.scenarios.file.VehicleEntry;
import curbwatt.scenarios.problem.Quoted;

/** A battery has the label of its chemistry, and the starter battery is of lead. */
final class ChemistryRule implements Rule {
    private static final double LEAST_MILLIOHM = 0.01;
    private static final double MOST_MILLIOHM = 1000;

    @Override
    public void look(ScenarioFile file, Findings findings) {
        file.batteries()
                .forEach(battery -> battery.chemistry().ifPresent(chemistry -> label(battery, chemistry, findings)));
        file.vehicle().ifPresent(vehicle -> starter(vehicle, findings));
    }

    private static void label(BatteryEntry battery, ChemistryWord chemistry, Findings findings) {
        battery.label().forEach((key, value) -> {
            Place place = battery.place().key(key);
            if (value.isPresent() && !chemistry.labelKeys().contains(key)) {
                findings.error(
                        place,
                        key + " does not belong to the label of the chemistry " + Quoted.name(chemistry.toString())
                                + ".",
                        "Remove it; such a label has " + String.join(", ", chemistry.labelKeys()) + ".");
            }
        });
        double milliohm = battery.resistanceMilliohm().orElse(LEAST_MILLIOHM);
        if (!chemistry.isLead() && (milliohm < LEAST_MILLIOHM || milliohm > MOST_MILLIOHM)) {
            findings.error(
                    battery.place().key("resistanceMilliohm"),
                    "resistanceMilliohm is " + Shown.number(milliohm) + " mΩ for a battery.",
                    "Allowed is 0.01 to 1000 mΩ, its protection included.");
        }
    }

    private static void starter(VehicleEntry vehicle, Findings findings) {
        vehicle.battery()
                .filter(battery -> battery.chemistry()
                        .filter(chemistry -> !chemistry.isLead())
                        .isPresent())
                .ifPresent(battery -> {
                    Place chemistry = battery.place().key("chemistry");
                    findings.error(
                            findings.isWritten(chemistry) ? chemistry : battery.place(),
                            "The starter battery is of the chemistry 'lfp', whose cranking is not modelled.",
                            "Take 'flooded' or 'agm' here; an iron-phosphate battery can be the auxiliary one.");
                });
    }
}
