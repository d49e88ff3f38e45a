package curbwatt.scenarios.assemble;

import curbwatt.engine.study.size.Candidate;
import curbwatt.scenarios.check.LabelFits;
import curbwatt.scenarios.file.BatteryEntry;
import curbwatt.scenarios.problem.Quoted;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * From the figures of a label to a battery that the fleet can buy.
 *
 * @param fits fits labels
 */
record CandidateAssembler(LabelFits fits) {

    /** Returns the battery, by the name of its part or by its label. */
    Candidate candidate(BatteryEntry entry) {
        return candidate(entry.part().orElseGet(() -> label(entry)), entry);
    }

    /** Returns the battery by another name. */
    Candidate candidate(String name, BatteryEntry entry) {
        // what is estimated of a battery that is only looked at is no assumption of the scenario
        return new Candidate(name, new BatteryFit(new Assumptions(), fits).parameters(Quoted.name(name), entry));
    }

    private static String label(BatteryEntry entry) {
        List<String> figures = new ArrayList<>();
        figures.add(entry.chemistry().orElseThrow().toString());
        figure(figures, entry.c20Ah(), "Ah");
        figure(figures, entry.capacityAh(), "Ah");
        figure(figures, entry.reserveMin(), "min");
        figure(figures, entry.coldCrankingA(), "A");
        figure(figures, entry.resistanceMilliohm(), "mΩ");
        return String.join(" ", figures);
    }

    private static void figure(List<String> figures, Optional<Double> value, String unit) {
        value.ifPresent(found ->
                figures.add((found == Math.rint(found) ? String.format(Locale.ROOT, "%.0f", found) : found.toString())
                        + " " + unit));
    }
}
