package curbwatt.engine.duty;

import java.util.Objects;

/**
 * What a duty test came to: a prediction, not a certification.
 *
 * @param test name of the test
 * @param answer whether it was passed
 * @param found the figure, in {@code unit}; NaN: the test never came to it
 * @param unit unit of the figure and of the limit
 * @param criterion the limit
 * @param supplied whether no cutoff opened during the test; otherwise the load was not what the test asks for
 * @param restarted whether the engine started, or ran, at the test's end
 */
public record DutyOutcome(
        String test,
        Answer answer,
        double found,
        String unit,
        DutyCriterion criterion,
        boolean supplied,
        boolean restarted) {

    /** Whether a test was passed. */
    public enum Answer {
        /** The figure is within its limit, the load stayed on and the engine ran at the end. */
        PASSED,
        /** One of these is not so. */
        FAILED,
        /** The test never came to its figure. */
        UNDECIDED
    }

    /** Refuses missing parts. */
    public DutyOutcome {
        Objects.requireNonNull(test, "test");
        Objects.requireNonNull(answer, "answer");
        Objects.requireNonNull(criterion, "criterion");
    }

    static DutyOutcome of(DutyTest test, double found, boolean supplied, boolean restarted) {
        DutyCriterion criterion = test.criterion();
        boolean passed = criterion.isMetBy(found) && supplied && restarted;
        Answer decided = passed ? Answer.PASSED : Answer.FAILED;
        Answer answer = Double.isNaN(found) ? Answer.UNDECIDED : decided;
        return new DutyOutcome(test.name(), answer, found, criterion.unit(), criterion, supplied, restarted);
    }
}
