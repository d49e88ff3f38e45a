package curbwatt.scenarios.check;

import curbwatt.scenarios.file.HoldEntry;
import curbwatt.scenarios.file.PhaseEntry;
import curbwatt.scenarios.file.Place;
import curbwatt.scenarios.file.ScenarioFile;
import curbwatt.scenarios.file.SceneEntry;
import curbwatt.scenarios.file.TimedEntry;
import curbwatt.scenarios.problem.Quoted;
import java.util.List;

/** Engine and time of a scene. */
final class SceneRule implements Rule {

    @Override
    public void look(ScenarioFile file, Findings findings) {
        if (file.scene().isEmpty()) {
            return;
        }
        SceneEntry scene = file.scene().get();
        scene.phases().forEach(phase -> phase(phase, findings));
        withoutAlternator(file, scene, findings);
        boolean lengthKnown = !findings.isSpoilt(scene.place().key("phases"))
                && scene.phases().stream().allMatch(phase -> phase.durationMin().isPresent());
        double lengthMin = scene.phases().stream()
                .mapToDouble(phase -> phase.durationMin().orElse(0.0))
                .sum();
        if (lengthKnown) {
            file.requirements().ifPresent(asked -> asked.hold().forEach(hold -> within(hold, lengthMin, findings)));
        }
    }

    private static void phase(PhaseEntry phase, Findings findings) {
        if (phase.engine().isEmpty()) {
            return;
        }
        Place speed = phase.place().key("engineRpm");
        Place profile = phase.place().key("speedProfile");
        String engine = Quoted.name(phase.engine().get().toString());
        boolean given = phase.engineRpm().isPresent() || !phase.speedProfile().isEmpty();
        if (phase.engine().get().runs()) {
            if (!given && !findings.isTouched(profile)) {
                findings.error(
                        speed,
                        "The engine runs in this phase (" + engine + "), but its speed is missing.",
                        "Add engineRpm (200 to 8000 /min), commonly 650 to 800 at idle, or a speedProfile.");
            }
            if (phase.engineRpm().isPresent() && !phase.speedProfile().isEmpty()) {
                findings.error(profile, "The phase has engineRpm and a speedProfile.", "Keep one of them.");
            }
        } else if (given) {
            findings.error(
                    phase.engineRpm().isPresent() ? speed : profile,
                    "The engine does not turn in this phase (" + engine + "), but a speed is given.",
                    "Remove it, or write \"engine\": \"idling\" or \"driving\".");
        }
        double lengthMin = phase.durationMin().orElse(Double.MAX_VALUE);
        profile(profile, phase.speedProfile(), lengthMin, findings);
        air(phase, lengthMin, findings);
    }

    private static void air(PhaseEntry phase, double lengthMin, Findings findings) {
        Place air = phase.place().key("airC");
        Place profile = phase.place().key("airProfile");
        boolean given = phase.airC().isPresent() || !phase.airProfile().isEmpty();
        if (!given && !findings.isTouched(profile)) {
            findings.error(
                    air,
                    "The air temperature of this phase is missing.",
                    "Add airC (-50 to 110 °C), or an airProfile.");
        }
        if (phase.airC().isPresent() && !phase.airProfile().isEmpty()) {
            findings.error(profile, "The phase has airC and an airProfile.", "Keep one of them.");
        }
        profile(profile, phase.airProfile(), lengthMin, findings);
    }

    /** Times of a profile rise, and none lies after the phase's end. */
    static void profile(Place place, List<? extends TimedEntry> points, double lengthMin, Findings findings) {
        if (findings.isTouched(place)) {
            return;
        }
        for (int i = 1; i < points.size(); i++) {
            TimedEntry after = points.get(i);
            double beforeMin = points.get(i - 1).atMin().orElse(0.0);
            if (after.atMin().orElse(0.0) <= beforeMin) {
                findings.error(
                        after.place().key("atMin"),
                        "atMin is " + Shown.number(after.atMin().orElse(0.0)) + " min after " + Shown.number(beforeMin)
                                + " min.",
                        "Times must rise from point to point.");
            }
        }
        points.stream()
                .filter(point -> point.atMin().orElse(0.0) > lengthMin)
                .findFirst()
                .ifPresent(point -> findings.warning(
                        point.place().key("atMin"),
                        "This point lies after the end of the phase, " + Shown.number(lengthMin) + " min.",
                        "Times count from the start of the phase."));
    }

    private static void withoutAlternator(ScenarioFile file, SceneEntry scene, Findings findings) {
        if (file.vehicle().isEmpty()
                || file.vehicle().get().alternator().isPresent()
                || findings.isTouched(file.vehicle().get().place().key("alternator"))) {
            return;
        }
        scene.phases().stream()
                .filter(phase -> phase.engine().filter(engine -> engine.runs()).isPresent())
                .findFirst()
                .ifPresent(phase -> findings.warning(
                        phase.place().key("engine"),
                        "The engine runs in this phase, but the vehicle has no alternator: nothing charges.",
                        "Add an \"alternator\" to the vehicle, if it has one."));
    }

    private static void within(HoldEntry hold, double lengthMin, Findings findings) {
        if (hold.forMin().isPresent() && hold.forMin().get() > lengthMin) {
            findings.error(
                    hold.place().key("forMin"),
                    "forMin is " + Shown.number(hold.forMin().get()) + " min, longer than the scene, "
                            + Shown.number(lengthMin) + " min.",
                    "Lengthen a phase, or ask for " + Shown.number(lengthMin) + " min at most.");
        }
    }
}
