package curbwatt.scenarios.check;

import curbwatt.scenarios.file.BatteryEntry;
import curbwatt.scenarios.file.ChemistryWord;
import curbwatt.scenarios.file.CutoffEntry;
import curbwatt.scenarios.file.IdleEntry;
import curbwatt.scenarios.file.Place;
import curbwatt.scenarios.file.ScenarioFile;
import curbwatt.scenarios.file.SettingsEntry;
import curbwatt.scenarios.file.VehicleEntry;
import curbwatt.scenarios.problem.Nearest;
import curbwatt.scenarios.problem.Quoted;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** What studies speak of is there. */
final class StudiesRule implements Rule {

    @Override
    public void look(ScenarioFile file, Findings findings) {
        file.studies().flatMap(studies -> studies.idle()).ifPresent(idle -> idle(idle, file, findings));
        if (file.vehicle().isPresent()) {
            VehicleEntry vehicle = file.vehicle().get();
            file.studies()
                    .flatMap(studies -> studies.settings())
                    .ifPresent(settings -> cutoff(settings, vehicle, findings));
            file.studies()
                    .flatMap(studies -> studies.size())
                    .ifPresent(size -> size.labels().forEach(label -> kind(label, vehicle, findings)));
        }
    }

    private static void idle(IdleEntry idle, ScenarioFile file, Findings findings) {
        if (findings.isTouched(idle.place())) {
            return;
        }
        boolean priced = Stream.of(
                        idle.wearPricePerHour(),
                        idle.wearPricePerStart(),
                        idle.idleControlPrice(),
                        idle.automaticStartPrice())
                .anyMatch(Optional::isPresent);
        if (priced && idle.fuelPricePerLitre().isEmpty()) {
            findings.warning(
                    idle.place(),
                    "The prices of studies.idle have no effect without fuelPricePerLitre.",
                    "Add it, or take them out.");
        }
        if (idle.fuelPricePerLitre().isPresent()
                && file.vehicle().flatMap(VehicleEntry::engine).isEmpty()) {
            findings.warning(
                    idle.place().key("fuelPricePerLitre"),
                    "fuelPricePerLitre has no effect: nothing says what the engine burns.",
                    "Add vehicle.engine, or take it out.");
        }
        unknownStages(idle.engineStages(), idle.place().key("engineStages"), file, findings);
    }

    /** Stages that no load has. */
    static void unknownStages(List<String> stages, Place place, ScenarioFile file, Findings findings) {
        Set<String> known = new TreeSet<>();
        file.vehicle()
                .ifPresent(vehicle -> vehicle.circuits()
                        .forEach(circuit -> circuit.loads().forEach(load -> known.addAll(load.stages()))));
        for (int i = 0; i < stages.size(); i++) {
            String stage = stages.get(i);
            if (!known.contains(stage)) {
                findings.error(
                        place.item(i),
                        "No load has the stage " + Quoted.name(stage) + ".",
                        known.isEmpty()
                                ? "Take it out."
                                : Quoted.didYouMean(Nearest.to(stage, List.copyOf(known))) + "Stages: "
                                        + Quoted.list(List.copyOf(known)) + ".");
            }
        }
    }

    private static void cutoff(SettingsEntry settings, VehicleEntry vehicle, Findings findings) {
        Place cutoffs = vehicle.place().key("cutoffs");
        List<String> names = vehicle.cutoffs().stream()
                .map(CutoffEntry::name)
                .flatMap(Optional::stream)
                .toList();
        boolean inDoubt =
                findings.isSpoilt(cutoffs) || names.size() < vehicle.cutoffs().size();
        settings.cutoff()
                .filter(name -> !inDoubt && !names.contains(name))
                .ifPresent(name -> findings.error(
                        settings.place().key("cutoff"),
                        "The vehicle has no cutoff " + Quoted.name(name) + ".",
                        names.isEmpty()
                                ? "Give it one in vehicle.cutoffs."
                                : Quoted.didYouMean(Nearest.to(name, names)) + "Cutoffs: " + Quoted.list(names) + "."));
    }

    /** Lead and iron phosphate need different protection and charging, so that one can't take the other's place. */
    private static void kind(BatteryEntry label, VehicleEntry vehicle, Findings findings) {
        Optional<ChemistryWord> sized = vehicle.auxiliary()
                .map(auxiliary -> auxiliary.battery())
                .orElse(vehicle.battery())
                .flatMap(BatteryEntry::chemistry);
        Optional<ChemistryWord> offered = label.chemistry();
        if (sized.isEmpty()
                || offered.isEmpty()
                || sized.get().isLead() == offered.get().isLead()) {
            return;
        }
        Place written = label.place().key("chemistry");
        findings.error(
                findings.isWritten(written) ? written : label.place(),
                "A battery of the chemistry " + Quoted.name(offered.get().toString())
                        + " can't take the place of one of "
                        + Quoted.name(sized.get().toString())
                        + ": protection and charging differ.",
                "Take it out, or change the vehicle's battery to its kind.");
    }
}
