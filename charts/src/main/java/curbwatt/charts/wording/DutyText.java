package curbwatt.charts.wording;

import curbwatt.engine.duty.DutyCriterion;
import curbwatt.engine.duty.DutyOutcome;
import java.util.List;

/** A duty test's outcome in words: a prediction, not a certification. */
public final class DutyText {

    private DutyText() {}

    /** Answer, name, figure and limit, as cells of a line. */
    public static List<String> line(DutyOutcome outcome) {
        String answer = switch (outcome.answer()) {
            case PASSED -> "passed";
            case FAILED -> "NOT PASSED";
            case UNDECIDED -> "undecided";
        };
        return List.of(
                answer,
                outcome.test(),
                figure(outcome),
                "limit " + PlainText.number(outcome.criterion().limit(), decimals(outcome)) + " " + outcome.unit());
    }

    /** What the figure is, what else decided, and where the limit comes from. */
    public static List<String> remarks(DutyOutcome outcome) {
        DutyCriterion criterion = outcome.criterion();
        String recalled = criterion.obtained() == DutyCriterion.Obtained.RECALLED
                ? " The limit is recalled, not read again: hold it against the standard."
                : "";
        String reached = Double.isNaN(outcome.found()) ? " The test never came to its figure." : "";
        String supplied =
                outcome.supplied() ? "" : " A cutoff opened, so that the load was not what the test asks for.";
        String restarted = outcome.restarted() ? "" : " The engine did not run at the test's end.";
        return List.of(
                "Figure: " + criterion.figure() + "." + reached + supplied + restarted,
                "Limit: " + criterion.source() + "." + recalled);
    }

    private static int decimals(DutyOutcome outcome) {
        return outcome.unit().equals("s") ? 0 : 2;
    }

    private static String figure(DutyOutcome outcome) {
        if (Double.isNaN(outcome.found())) {
            return "–";
        }
        return Double.isInfinite(outcome.found())
                ? "never"
                : PlainText.number(outcome.found(), decimals(outcome)) + " " + outcome.unit();
    }
}
