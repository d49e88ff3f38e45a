package curbwatt.scenarios.check;

import curbwatt.scenarios.file.DayEntry;
import curbwatt.scenarios.file.EngineWord;
import curbwatt.scenarios.file.PhaseEntry;
import curbwatt.scenarios.file.Place;
import curbwatt.scenarios.file.RosterEntry;
import curbwatt.scenarios.file.ScenarioFile;
import curbwatt.scenarios.file.SceneEntry;
import curbwatt.scenarios.problem.Nearest;
import curbwatt.scenarios.problem.Quoted;
import java.util.LinkedHashMap;
import java.util.Map;

/** A roster speaks of phases of the scene, is parked in a parked one, and its days have 24 hours. */
final class RosterRule implements Rule {
    private static final double DAY_MIN = 1440;

    @Override
    public void look(ScenarioFile file, Findings findings) {
        file.scene().ifPresent(scene -> scene.roster().ifPresent(roster -> look(scene, roster, findings)));
    }

    private static void look(SceneEntry scene, RosterEntry roster, Findings findings) {
        if (findings.isTouched(scene.place().key("phases"))) {
            return;
        }
        Map<String, PhaseEntry> phases = new LinkedHashMap<>();
        scene.phases().forEach(phase -> phase.name().ifPresent(name -> phases.putIfAbsent(name, phase)));
        roster.parked().ifPresent(name -> parked(name, roster.place().key("parked"), phases, findings));
        roster.pattern().forEach(day -> day(day, phases, findings));
    }

    private static void parked(String name, Place place, Map<String, PhaseEntry> phases, Findings findings) {
        if (!isKnown(name, place, phases, findings)) {
            return;
        }
        phases.get(name)
                .engine()
                .filter(engine -> engine != EngineWord.PARKED)
                .ifPresent(engine -> findings.error(
                        place,
                        "The phase " + Quoted.name(name) + " is not a parked one, but " + Quoted.name(engine.toString())
                                + ".",
                        "Name a phase with \"engine\": \"parked\"."));
    }

    private static void day(DayEntry day, Map<String, PhaseEntry> phases, Findings findings) {
        double lengthMin = 0;
        for (int i = 0; i < day.phases().size(); i++) {
            String name = day.phases().get(i);
            if (!isKnown(name, day.place().key("phases").item(i), phases, findings)) {
                return;
            }
            lengthMin += phases.get(name).durationMin().orElse(0.0);
        }
        if (lengthMin > DAY_MIN) {
            findings.error(
                    day.place().key("phases"),
                    "These phases are " + Shown.number(lengthMin) + " min long together; a day has 1440.",
                    "Take one out, or shorten one.");
        }
    }

    private static boolean isKnown(String name, Place place, Map<String, PhaseEntry> phases, Findings findings) {
        if (phases.containsKey(name)) {
            return true;
        }
        findings.error(
                place,
                "The scene has no phase " + Quoted.name(name) + ".",
                Quoted.didYouMean(Nearest.to(name, phases.keySet())) + "Phases: " + Quoted.list(phases.keySet()) + ".");
        return false;
    }
}
