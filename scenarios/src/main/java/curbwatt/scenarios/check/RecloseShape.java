package curbwatt.scenarios.check;

import curbwatt.scenarios.file.Place;
import curbwatt.scenarios.file.RecloseEntry;
import curbwatt.scenarios.file.RecloseWord;

/** Which keys go with which rule of closing, wherever such a rule stands. */
final class RecloseShape {

    private RecloseShape() {}

    /**
     * Looks at one rule.
     *
     * @param reclose the rule
     * @param whose beginning of the clause that says how it closes, such as "this cutoff recloses "
     * @param findings hears of it
     */
    static void look(RecloseEntry reclose, String whose, Findings findings) {
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
                    key + " goes with \"when\": \"above voltage\", but " + whose + word(reclose) + ".",
                    "Remove it, or write \"when\": \"above voltage\".");
        }
    }

    private static String word(RecloseEntry reclose) {
        return reclose.when().get() == RecloseWord.ENGINE_RUNNING ? "when the engine runs" : "by hand";
    }
}
