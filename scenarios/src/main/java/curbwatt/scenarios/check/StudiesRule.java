package curbwatt.scenarios.check;

import curbwatt.scenarios.file.BatteryEntry;
import curbwatt.scenarios.file.ChemistryWord;
import curbwatt.scenarios.file.CutoffEntry;
import curbwatt.scenarios.file.Place;
import curbwatt.scenarios.file.ScenarioFile;
import curbwatt.scenarios.file.SettingsEntry;
import curbwatt.scenarios.file.VehicleEntry;
import curbwatt.scenarios.problem.Nearest;
import curbwatt.scenarios.problem.Quoted;
import java.util.List;
import java.util.Optional;

/** What studies speak of is there. */
final class StudiesRule implements Rule {

    @Override
    public void look(ScenarioFile file, Findings findings) {
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
