package curbwatt.scenarios.check;

import curbwatt.scenarios.file.Place;
import curbwatt.scenarios.file.RecloseEntry;
import curbwatt.scenarios.file.ScenarioFile;
import curbwatt.scenarios.file.SettingsEntry;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Rules of closing that a search for settings is to try: each can be set, and each is another. */
final class SettingsRule implements Rule {

    /** The lowest of the trip levels that are tried where the file names none (V). */
    private static final double USUAL_LOWEST_V = 10.6;

    @Override
    public void look(ScenarioFile file, Findings findings) {
        file.studies().flatMap(studies -> studies.settings()).ifPresent(settings -> {
            boolean levelsAreKnown = !findings.isTouched(settings.place().key("tripLevelsV"));
            settings.recloses().forEach(reclose -> {
                RecloseShape.look(reclose, "this rule closes ", findings);
                if (levelsAreKnown) {
                    level(reclose, settings, findings);
                }
            });
            twice(settings.recloses(), findings);
        });
    }

    /** A rule above none of the trip levels tried would fill its map with settings that can't be set. */
    private static void level(RecloseEntry reclose, SettingsEntry settings, Findings findings) {
        double lowestV = settings.tripLevelsV().stream()
                .mapToDouble(Double::doubleValue)
                .min()
                .orElse(USUAL_LOWEST_V);
        reclose.aboveV()
                .filter(aboveV -> aboveV <= lowestV)
                .ifPresent(aboveV -> findings.error(
                        reclose.place().key("aboveV"),
                        "aboveV is " + Shown.number(aboveV) + " V, not above any trip level tried; the lowest is "
                                + Shown.number(lowestV) + " V.",
                        "With this rule nothing could be set: raise aboveV, commonly to 12.8 V or more."));
    }

    private static void twice(List<RecloseEntry> recloses, Findings findings) {
        Map<RecloseEntry, Integer> seen = new HashMap<>();
        for (int i = 0; i < recloses.size(); i++) {
            RecloseEntry reclose = recloses.get(i);
            RecloseEntry alone = new RecloseEntry(
                    Place.ROOT,
                    reclose.when(),
                    reclose.aboveV(),
                    reclose.delayS().filter(delayS -> delayS != 0));
            Integer before = seen.putIfAbsent(alone, i);
            if (before != null) {
                findings.error(
                        reclose.place(),
                        "This is the same rule of closing as recloses[" + before + "].",
                        "Take it out: its map would be the same.");
            }
        }
    }
}
