package curbwatt.scenarios.assemble;

import curbwatt.engine.battery.label.FittedLabel;
import curbwatt.engine.load.Load;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.vehicle.Vehicle;
import curbwatt.scenarios.file.AlternatorEntry;
import curbwatt.scenarios.file.AuxiliaryEntry;
import curbwatt.scenarios.file.BatteryEntry;
import curbwatt.scenarios.file.LinkEntry;
import curbwatt.scenarios.file.Setting;
import curbwatt.scenarios.file.StarterEntry;
import curbwatt.scenarios.file.VehicleEntry;
import curbwatt.scenarios.problem.Quoted;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** Collects sentences on what was estimated, taken from the catalogue, or taken for granted. */
final class Assumptions {
    private final List<String> sentences = new ArrayList<>();

    /** Adds a sentence. */
    void add(String sentence) {
        sentences.add(sentence);
    }

    /** Notes, in one sentence, what was set beside the file. */
    void set(List<Setting> settings) {
        if (!settings.isEmpty()) {
            add(settings.stream()
                    .map(setting -> setting.takesOut()
                            ? setting.path() + " taken out"
                            : setting.path() + " = " + setting.value())
                    .collect(Collectors.joining("; ", "Set for this run, whatever the file says: ", ".")));
        }
    }

    /** Notes, in one sentence, what has figures from the catalogue. */
    void parts(VehicleEntry vehicle) {
        Map<String, List<String>> users = new LinkedHashMap<>();
        vehicle.battery().flatMap(BatteryEntry::part).ifPresent(part -> use(users, part, "the battery"));
        vehicle.auxiliary()
                .flatMap(AuxiliaryEntry::battery)
                .flatMap(BatteryEntry::part)
                .ifPresent(part -> use(users, part, "the auxiliary battery"));
        vehicle.auxiliary()
                .flatMap(AuxiliaryEntry::link)
                .flatMap(LinkEntry::part)
                .ifPresent(part -> use(users, part, "the link"));
        vehicle.alternator().flatMap(AlternatorEntry::part).ifPresent(part -> use(users, part, "the alternator"));
        vehicle.circuits().stream()
                .flatMap(circuit -> circuit.loads().stream())
                .forEach(load -> load.part()
                        .ifPresent(
                                part -> use(users, part, Quoted.name(load.name().orElseThrow()))));
        vehicle.starter().flatMap(StarterEntry::part).ifPresent(part -> use(users, part, "the starter"));
        if (!users.isEmpty()) {
            add(users.entrySet().stream()
                    .map(user -> String.join(", ", user.getValue()) + " (" + user.getKey() + ")")
                    .collect(Collectors.joining(", ", "The catalogue supplies what the file leaves out for ", ".")));
        }
    }

    private static void use(Map<String, List<String>> users, String part, String user) {
        users.computeIfAbsent(part, key -> new ArrayList<>()).add(user);
    }

    /** Notes figures of a label that were estimated. */
    void estimated(String battery, FittedLabel fitted) {
        if (fitted.reserveEstimated()) {
            add(String.format(
                    Locale.ROOT,
                    "The reserve capacity of the %s is estimated from the 20 h capacity: %.0f min (0.83 · C20^1.17, a maker's"
                            + " public manual).",
                    battery,
                    fitted.figures().reserveMin()));
        }
        if (fitted.coldCrankingEstimated()) {
            add(String.format(
                    Locale.ROOT,
                    "The cold cranking current of the %s is estimated from the 20 h capacity: %.0f A, in proportion to one"
                            + " published label.",
                    battery,
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
