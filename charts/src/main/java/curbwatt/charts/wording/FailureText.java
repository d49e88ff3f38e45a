package curbwatt.charts.wording;

import curbwatt.engine.verdict.Finding;
import curbwatt.engine.verdict.Requirement;

/**
 * What was not met, in a few words, without the run it is about.
 *
 * @param finding the finding that failed
 */
record FailureText(Finding finding) {

    /** "'Roof bar' is lost after 48 min of the 2 h asked, by 'Cutoff'". */
    String words() {
        Requirement requirement = finding.requirement();
        if (requirement instanceof Requirement.HoldCircuits) {
            String by = finding.cause().isEmpty() ? "" : ", by " + PlainText.quoted(finding.cause());
            return "supply is lost after " + PlainText.time(60 * finding.figure()) + " of the "
                    + PlainText.time(60 * finding.limit()) + " asked" + by;
        }
        if (FindingText.isStart(requirement)) {
            return Double.isInfinite(finding.figure())
                    ? "the engine can't be cranked at all"
                    : "the start has " + PlainText.number(finding.figure(), 3) + " V to spare, "
                            + PlainText.volts(finding.limit()) + " are asked";
        }
        if (requirement instanceof Requirement.NoTrip) {
            return PlainText.quoted(finding.cause()) + " opens where it must not";
        }
        if (requirement instanceof Requirement.KeepVoltage keep) {
            return PlainText.quoted(keep.circuit()) + " gets " + PlainText.number(finding.figure(), 3) + " V, "
                    + PlainText.volts(finding.limit()) + " are asked";
        }
        return "the charge falls to " + PlainText.number(100 * finding.figure(), 1) + " %, "
                + PlainText.percent(finding.limit()) + " are asked";
    }
}
