package curbwatt.scenarios.check;

import curbwatt.scenarios.file.CutoffEntry;
import curbwatt.scenarios.file.Place;
import curbwatt.scenarios.file.RecloseEntry;
import curbwatt.scenarios.file.RecloseWord;
import curbwatt.scenarios.file.ScenarioFile;
import curbwatt.scenarios.file.ShedsCircuits;
import java.util.List;

/** Levels of a cutoff that contradict each other. */
final class CutoffRule implements Rule {

    @Override
    public void look(ScenarioFile file, Findings findings) {
        file.vehicle()
                .ifPresent(vehicle -> vehicle.cutoffs().forEach(cutoff -> {
                    warning(cutoff, findings);
                    cutoff.contacts()
                            .forEach(contact ->
                                    contact.reclose().ifPresent(reclose -> reclose(contact, reclose, findings)));
                    order(cutoff.contacts(), findings);
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

    private static void reclose(ShedsCircuits cutoff, RecloseEntry reclose, Findings findings) {
        RecloseShape.look(reclose, "this cutoff recloses ", findings);
        Place level = reclose.place().key("aboveV");
        boolean byVoltage =
                reclose.when().filter(RecloseWord.ABOVE_VOLTAGE::equals).isPresent();
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

    private static void order(List<ShedsCircuits> contacts, Findings findings) {
        for (int i = 1; i < contacts.size(); i++) {
            ShedsCircuits before = contacts.get(i - 1);
            ShedsCircuits after = contacts.get(i);
            if (before.tripV().isEmpty() || after.tripV().isEmpty()) {
                continue;
            }
            double beforeV = before.tripV().get();
            double afterV = after.tripV().get();
            boolean longer =
                    after.tripDelayS().orElse(0.0) > before.tripDelayS().orElse(0.0);
            if (afterV > beforeV || (afterV == beforeV && !longer)) {
                findings.error(
                        before.place().key("tripV"),
                        "This step opens at " + Shown.number(beforeV) + " V, not before what comes after it, at "
                                + Shown.number(afterV) + " V.",
                        "Each step lies higher than the next, or as high with a shorter tripDelayS; the cutoff itself is"
                                + " the last.");
            }
        }
    }
}
