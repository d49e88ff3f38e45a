package curbwatt.scenarios.check;

import curbwatt.scenarios.file.CircuitEntry;
import curbwatt.scenarios.file.CutoffEntry;
import curbwatt.scenarios.file.Place;
import curbwatt.scenarios.file.ScenarioFile;
import curbwatt.scenarios.file.ShedsCircuits;
import curbwatt.scenarios.file.VehicleEntry;
import curbwatt.scenarios.problem.Nearest;
import curbwatt.scenarios.problem.Quoted;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/** Names of circuits that cutoffs and requirements speak of. */
final class ReferenceRule implements Rule {

    @Override
    public void look(ScenarioFile file, Findings findings) {
        if (file.vehicle().isEmpty() || namesAreInDoubt(file.vehicle().get(), findings)) {
            return;
        }
        VehicleEntry vehicle = file.vehicle().get();
        List<String> circuits = vehicle.circuits().stream()
                .map(CircuitEntry::name)
                .flatMap(Optional::stream)
                .toList();
        Map<String, Place> claimed = new HashMap<>();
        for (CutoffEntry cutoff : vehicle.cutoffs()) {
            cutoff.senseAtFeedEndOf()
                    .ifPresent(name -> known(name, cutoff.place().key("senseAtFeedEndOf"), circuits, findings));
            for (ShedsCircuits contact : cutoff.contacts()) {
                each(contact.disconnects(), contact.place().key("disconnects"), circuits, findings);
                claim(contact, claimed, vehicle, findings);
            }
        }
        file.requirements().ifPresent(asked -> {
            asked.hold().forEach(hold -> each(hold.circuits(), hold.place().key("circuits"), circuits, findings));
            asked.leastVoltage()
                    .forEach(least -> least.circuit()
                            .ifPresent(name -> known(name, least.place().key("circuit"), circuits, findings)));
        });
    }

    /** Where a circuit or its name was refused, a name that is not known may be right. */
    private static boolean namesAreInDoubt(VehicleEntry vehicle, Findings findings) {
        Place circuits = vehicle.place().key("circuits");
        return findings.isSpoilt(circuits)
                || vehicle.circuits().stream()
                        .anyMatch(circuit -> circuit.name().isEmpty());
    }

    private static void each(List<String> names, Place place, List<String> circuits, Findings findings) {
        IntStream.range(0, names.size()).forEach(i -> known(names.get(i), place.item(i), circuits, findings));
    }

    private static void known(String name, Place place, List<String> circuits, Findings findings) {
        if (!circuits.contains(name)) {
            findings.error(
                    place,
                    "The vehicle has no circuit " + Quoted.name(name) + ".",
                    Quoted.didYouMean(Nearest.to(name, circuits)) + "Circuits: " + Quoted.list(circuits) + ".");
        }
    }

    private static void claim(
            ShedsCircuits contact, Map<String, Place> claimed, VehicleEntry vehicle, Findings findings) {
        for (int i = 0; i < contact.disconnects().size(); i++) {
            String name = contact.disconnects().get(i);
            Place place = contact.place().key("disconnects").item(i);
            if (vehicle.circuits().stream().anyMatch(circuit -> isMinimum(circuit, name))) {
                findings.error(
                        place,
                        "The circuit " + Quoted.name(name) + " is minimum load, which is never shed.",
                        "Take it out of disconnects, or remove minimumLoad there.");
            }
            Place first = claimed.putIfAbsent(name, place);
            if (first != null) {
                findings.error(
                        place,
                        "The circuit " + Quoted.name(name) + " is disconnected twice, first in line "
                                + findings.line(first) + ".",
                        "A circuit belongs to one cutoff or step at most; name it once.");
            }
        }
    }

    private static boolean isMinimum(CircuitEntry circuit, String name) {
        return circuit.minimumLoad().orElse(false)
                && circuit.name().filter(name::equals).isPresent();
    }
}
