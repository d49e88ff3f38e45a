package curbwatt.scenarios.check;

import curbwatt.scenarios.file.Place;
import curbwatt.scenarios.file.ScenarioFile;
import curbwatt.scenarios.problem.Quoted;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Circuits, loads, cutoffs and phases each have names of their own. */
final class NameRule implements Rule {

    @Override
    public void look(ScenarioFile file, Findings findings) {
        file.vehicle().ifPresent(vehicle -> {
            Map<String, Place> circuits = new HashMap<>();
            Map<String, Place> loads = new HashMap<>();
            vehicle.circuits().forEach(circuit -> {
                once("circuit", circuit.name(), circuit.place(), circuits, findings);
                circuit.loads().forEach(load -> once("load", load.name(), load.place(), loads, findings));
            });
            Map<String, Place> cutoffs = new HashMap<>();
            vehicle.cutoffs().stream()
                    .flatMap(cutoff -> cutoff.contacts().stream())
                    .forEach(contact -> once("cutoff", contact.name(), contact.place(), cutoffs, findings));
        });
        Map<String, Place> phases = new HashMap<>();
        file.scene()
                .ifPresent(scene ->
                        scene.phases().forEach(phase -> once("phase", phase.name(), phase.place(), phases, findings)));
    }

    private static void once(
            String what, Optional<String> name, Place entry, Map<String, Place> seen, Findings findings) {
        if (name.isEmpty()) {
            return;
        }
        Place place = entry.key("name");
        Place first = seen.putIfAbsent(name.get(), place);
        if (first != null) {
            findings.error(
                    place,
                    "Two " + what + "s are called " + Quoted.name(name.get()) + ", the first in line "
                            + findings.line(first) + ".",
                    "Give each " + what + " a name of its own"
                            + (what.equals("load") ? ", or write one of them with \"count\"." : "."));
        }
    }
}
