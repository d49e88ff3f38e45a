package curbwatt.scenarios.assemble;

import curbwatt.engine.battery.label.FittedLabel;
import curbwatt.engine.load.Load;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.vehicle.Vehicle;
import curbwatt.scenarios.file.CircuitEntry;
import curbwatt.scenarios.problem.Quoted;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Collects sentences on what was estimated, taken from the catalogue, or taken for granted. */
final class Assumptions {
    private final List<String> sentences = new ArrayList<>();

    /** Adds a sentence. */
    void add(String sentence) {
        sentences.add(sentence);
    }

    /** Notes that something has its figures from the catalogue, as far as the file gives none. */
    void part(String what, Optional<String> part) {
        part.ifPresent(
                name -> add(what + " has what the file leaves out from the catalogue part " + Quoted.name(name) + "."));
    }

    /** Notes which loads have their figures from the catalogue. */
    void parts(List<CircuitEntry> circuits) {
        Map<String, List<String>> loads = new LinkedHashMap<>();
        circuits.stream()
                .flatMap(circuit -> circuit.loads().stream())
                .forEach(load -> load.part()
                        .ifPresent(part -> loads.computeIfAbsent(part, key -> new ArrayList<>())
                                .add(load.name().orElse(part))));
        loads.forEach((part, names) -> add("Catalogue part " + Quoted.name(part)
                + " supplies what the file leaves out for " + Quoted.list(names) + "."));
    }

    /** Notes figures of the label that were estimated. */
    void estimated(FittedLabel fitted) {
        if (fitted.reserveEstimated()) {
            add(String.format(
                    Locale.ROOT,
                    "The reserve capacity is estimated from the 20 h capacity: %.0f min (0.83 · C20^1.17, a maker's public"
                            + " manual).",
                    fitted.figures().reserveMin()));
        }
        if (fitted.coldCrankingEstimated()) {
            add(String.format(
                    Locale.ROOT,
                    "The cold cranking current is estimated from the 20 h capacity: %.0f A, in proportion to one published"
                            + " label.",
                    fitted.figures().coldCrankingA()));
        }
    }

    /** Notes circuits whose wire is not described. */
    void noFeed(List<String> circuits) {
        if (!circuits.isEmpty()) {
            add("Without resistance, because no feed is given: " + Quoted.list(circuits) + ".");
        }
    }

    /** Notes loads of which nobody said how they follow the voltage. */
    void noBehaviour(List<String> loads) {
        if (!loads.isEmpty()) {
            add("Taken as constant power, because no behaviour is given: " + Quoted.list(loads) + ".");
        }
    }

    /** Notes loads that no phase switches on. */
    void neverOn(Vehicle vehicle, Scene scene) {
        List<String> names = vehicle.loads()
                .filter(load -> scene.phases().stream().noneMatch(phase -> load.isOnIn(phase.stages())))
                .map(Load::name)
                .toList();
        if (!names.isEmpty()) {
            add("Never on in this scene, because no phase has their stages: " + Quoted.list(names) + ".");
        }
    }

    /** Returns the sentences in the order in which they were added. */
    List<String> sentences() {
        return List.copyOf(sentences);
    }
}
