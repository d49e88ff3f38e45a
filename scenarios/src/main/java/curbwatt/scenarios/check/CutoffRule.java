package curbwatt.scenarios.check;

import curbwatt.scenarios.file.CutoffEntry;
import curbwatt.scenarios.file.Place;
import curbwatt.scenarios.file.RecloseEntry;
import curbwatt.scenarios.file.RecloseWord;
import curbwatt.scenarios.file.ScenarioFile;

/** Levels of a cutoff that contradict each other. */
final class CutoffRule implements Rule {

    @Override
    public void look(ScenarioFile file, Findings findings) {
        file.vehicle()
                .ifPresent(vehicle -> vehicle.cutoffs().forEach(cutoff -> {
                    warning(cutoff, findings);
                    cutoff.reclose().ifPresent(reclose -> reclose(cutoff, reclose, findings));
                }));
    }

    private static void warning(CutoffEntry cutoff, Findings findings) {
        if (cutoff.warningV().isEmpty() || cutoff.tripV().isEmpty()) {
            return;
        }
        double warningV = cutoff.warningV().get();
        double tripV = cutoff.tripV().get();
        if (warningV < tripV) {
            findings.error(
                    cutoff.place().key("warningV"),
                    "warningV is " + Shown.number(warningV) + " V, below tripV, " + Shown.number(tripV) + " V.",
                    "A warning comes before the trip: give it " + Shown.number(tripV) + " V or more.");
        }
    }

    private static void reclose(CutoffEntry cutoff, RecloseEntry reclose, Findings findings) {
        if (reclose.when().isEmpty()) {
            return;
        }
        Place level = reclose.place().key("aboveV");
        boolean byVoltage = reclose.when().get() == RecloseWord.ABOVE_VOLTAGE;
        if (byVoltage && reclose.aboveV().isEmpty()) {
            findings.error(level, "The reclose level is missing.", "Add aboveV, above tripV (8 to 16 V).");
        }
        if (!byVoltage && (reclose.aboveV().isPresent() || reclose.delayS().isPresent())) {
            String key = reclose.aboveV().isPresent() ? "aboveV" : "delayS";
            findings.error(
                    reclose.place().key(key),
                    key + " goes with \"when\": \"above voltage\", but this cutoff recloses " + word(reclose) + ".",
                    "Remove it, or write \"when\": \"above voltage\".");
        }
        if (byVoltage && reclose.aboveV().isPresent() && cutoff.tripV().isPresent()) {
            double aboveV = reclose.aboveV().get();
            double tripV = cutoff.tripV().get();
            if (aboveV <= tripV) {
                findings.error(
                        level,
                        "aboveV is " + Shown.number(aboveV) + " V, not above tripV, " + Shown.number(tripV) + " V.",
                        "The cutoff would close as soon as it has opened: raise aboveV, commonly to 12.8 V or more.");
            }
        }
    }

    private static String word(RecloseEntry reclose) {
        return reclose.when().get() == RecloseWord.ENGINE_RUNNING ? "when the engine runs" : "by hand";
    }
}
