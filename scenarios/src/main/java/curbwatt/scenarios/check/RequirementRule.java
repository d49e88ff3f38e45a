package curbwatt.scenarios.check;

import curbwatt.scenarios.file.PhaseEntry;
import curbwatt.scenarios.file.Place;
import curbwatt.scenarios.file.RequirementsEntry;
import curbwatt.scenarios.file.ScenarioFile;
import curbwatt.scenarios.file.SceneEntry;
import curbwatt.scenarios.problem.Nearest;
import curbwatt.scenarios.problem.Quoted;
import java.util.List;
import java.util.Optional;

/** Requirements on a start after parking are complete, and phases that they speak of are there. */
final class RequirementRule implements Rule {

    @Override
    public void look(ScenarioFile file, Findings findings) {
        file.requirements().ifPresent(asked -> {
            parked(asked, findings);
            file.scene().ifPresent(scene -> phases(asked, scene, findings));
        });
    }

    private static void parked(RequirementsEntry asked, Findings findings) {
        Place hours = asked.place().key("restartAfterParkedH");
        Place margin = asked.place().key("restartMarginV");
        if (asked.restartAfterParkedH().isPresent()
                && asked.restartMarginV().isEmpty()
                && !findings.isTouched(margin)) {
            findings.error(
                    hours,
                    "A start after parking is asked for, but not with how much room.",
                    "Add restartMarginV (0 to 3 V), commonly 0.3.");
        }
        if (asked.parkedAirC().isPresent() && asked.restartAfterParkedH().isEmpty() && !findings.isTouched(hours)) {
            findings.error(
                    asked.place().key("parkedAirC"),
                    "parkedAirC is the air while the vehicle is parked, but no start after parking is asked for.",
                    "Add restartAfterParkedH, or remove it.");
        }
    }

    private static void phases(RequirementsEntry asked, SceneEntry scene, Findings findings) {
        if (findings.isTouched(scene.place().key("phases"))) {
            return;
        }
        List<String> names = scene.phases().stream()
                .map(PhaseEntry::name)
                .flatMap(Optional::stream)
                .toList();
        for (int i = 0; i < asked.noTripIn().size(); i++) {
            String name = asked.noTripIn().get(i);
            if (!names.contains(name)) {
                findings.error(
                        asked.place().key("noTripIn").item(i),
                        "The scene has no phase " + Quoted.name(name) + ".",
                        Quoted.didYouMean(Nearest.to(name, names)) + "Phases: " + Quoted.list(names) + ".");
            }
        }
    }
}
