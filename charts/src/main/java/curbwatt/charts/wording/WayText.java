package curbwatt.charts.wording;

import curbwatt.engine.event.EventKind;
import curbwatt.engine.study.Answer;
import curbwatt.engine.study.idle.WayOutcome;
import curbwatt.engine.verdict.Finding;
import curbwatt.engine.verdict.Requirement;

/** What stands in a run's way, in a few words; for tables and sentences on several runs. */
public final class WayText {

    private WayText() {}

    /** Why a way does not serve; "holds" if it does. */
    public static String found(WayOutcome outcome) {
        if (outcome.serves()) {
            return "holds";
        }
        return failure(outcome.answer());
    }

    /** What a run misses first; "holds" if nothing. */
    public static String failure(Answer answer) {
        return answer.firstFailure()
                .map(WayText::failure)
                .orElse(didNotStart(answer) ? "the engine does not start when it should" : "holds");
    }

    private static boolean didNotStart(Answer answer) {
        return answer.result().events().stream().anyMatch(event -> event.kind() == EventKind.ENGINE_DID_NOT_START);
    }

    private static String failure(Finding finding) {
        Requirement requirement = finding.requirement();
        if (requirement instanceof Requirement.HoldCircuits) {
            return "holds " + PlainText.time(60 * finding.figure()) + " of " + PlainText.time(60 * finding.limit());
        }
        if (requirement instanceof Requirement.WillStart) {
            return finding.figure() < 0
                    ? "would not start"
                    : "starts with " + PlainText.volts(finding.figure()) + " to spare of "
                            + PlainText.volts(finding.limit()) + " asked";
        }
        if (requirement instanceof Requirement.KeepVoltage voltage) {
            return PlainText.quoted(voltage.circuit()) + " falls to " + PlainText.volts(finding.figure()) + ", "
                    + PlainText.volts(finding.limit()) + " asked";
        }
        if (requirement instanceof Requirement.StartAfterParked) {
            return finding.figure() < 0
                    ? "would not start after hours parked"
                    : "starts after hours parked with " + PlainText.volts(finding.figure()) + " to spare of "
                            + PlainText.volts(finding.limit()) + " asked";
        }
        if (requirement instanceof Requirement.NoTrip) {
            return PlainText.quoted(finding.cause()) + " opens " + PlainText.count(Math.round(finding.figure()), "time")
                    + " where no cutoff may";
        }
        String whose = requirement instanceof Requirement.KeepAuxiliaryCharge ? "auxiliary charge" : "charge";
        return whose + " falls to " + PlainText.percent(finding.figure()) + ", " + PlainText.percent(finding.limit())
                + " asked";
    }
}
