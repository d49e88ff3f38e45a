package curbwatt.scenarios.check;

import curbwatt.scenarios.file.AlternatorEntry;
import curbwatt.scenarios.file.AuxiliaryEntry;
import curbwatt.scenarios.file.BatteryEntry;
import curbwatt.scenarios.file.ChemistryWord;
import curbwatt.scenarios.file.LoadEntry;
import curbwatt.scenarios.file.Place;
import curbwatt.scenarios.file.ScenarioFile;
import curbwatt.scenarios.file.StarterEntry;
import curbwatt.scenarios.file.VehicleEntry;
import curbwatt.scenarios.problem.Quoted;
import java.util.Optional;

/** Figures that must come from the file or from its parts. */
final class CompletenessRule implements Rule {

    @Override
    public void look(ScenarioFile file, Findings findings) {
        file.batteries().forEach(battery -> look(battery, findings));
        file.vehicle().ifPresent(vehicle -> look(vehicle, findings));
    }

    private static void look(BatteryEntry battery, Findings findings) {
        needed(battery.place(), battery.part(), "chemistry", battery.chemistry(), findings);
        battery.chemistry()
                .orElse(ChemistryWord.FLOODED)
                .needed()
                .forEach(key -> needed(
                        battery.place(), battery.part(), key, battery.label().get(key), findings));
    }

    private static void look(VehicleEntry vehicle, Findings findings) {
        vehicle.auxiliary()
                .flatMap(AuxiliaryEntry::link)
                .ifPresent(link -> needed(link.place(), link.part(), "kind", link.kind(), findings));
        for (AlternatorEntry alternator : vehicle.alternator().stream().toList()) {
            if (alternator.table().isEmpty()
                    && !findings.isTouched(alternator.place().key("table"))) {
                needed(alternator.place(), alternator.part(), "idleA", alternator.idleA(), findings);
                needed(alternator.place(), alternator.part(), "ratedA", alternator.ratedA(), findings);
            }
        }
        vehicle.circuits().forEach(circuit -> circuit.loads().forEach(load -> look(load, findings)));
        for (StarterEntry starter : vehicle.starter().stream().toList()) {
            needed(starter.place(), starter.part(), "crankingA", starter.crankingA(), findings);
        }
    }

    private static void look(LoadEntry load, Findings findings) {
        needed(load.place(), load.part(), "ratedCurrentA", load.ratedCurrentA(), findings);
    }

    private static void needed(Place entry, Optional<String> part, String key, Optional<?> value, Findings findings) {
        if (value.isPresent() || findings.isSpoilt(entry.key("part"))) {
            return;
        }
        String who = part.map(name -> "; the part " + Quoted.name(name) + " does not supply it")
                .orElse("");
        findings.error(
                entry.key(key),
                "The key " + Quoted.name(key) + " is missing in " + entry.path() + who + ".",
                part.isPresent() ? "Add it here." : "Add it, or name a catalogue part with \"part\".");
    }
}
