package curbwatt.charts.wording;

import curbwatt.engine.study.recharge.SceneCharge;
import curbwatt.engine.study.recharge.ShiftAnswer;
import curbwatt.engine.study.recharge.ShiftOutcome;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Whether a shift pattern keeps up, in words.
 *
 * @param answer what was found
 */
public record ShiftText(ShiftAnswer answer) {

    private static final double SAME_PRINTED = 0.005;
    private static final String PATTERN = "The shift pattern ";

    /** The answer in a sentence or two. */
    public String sentence() {
        if (answer.keepsUp()) {
            return PATTERN + "keeps up: scenes begin with " + settled(answer.outcome()) + " or more.";
        }
        return PATTERN + "does not keep up: " + fate() + "." + remedy();
    }

    private String fate() {
        ShiftOutcome outcome = answer.outcome();
        return switch (outcome.course()) {
            case DOES_NOT_START -> "on day " + outcome.failedStartDay() + " the engine does not start";
            case CREEPS_DOWN -> "the charge sinks week by week, and the last scenes begin with " + settled(outcome);
            case HELD_BY_CUTOFF ->
                "the cutoff still takes equipment away in the second half, " + (isCharged() ? "although" : "and")
                        + " the last scenes begin with " + settled(outcome);
            case TOO_SHORT -> "its " + outcome.roster().days() + " days are too few to say where the charge is going";
            case KEEPS_UP ->
                "it settles where scenes begin with as little as " + settled(outcome) + ", and "
                        + PlainText.percent(answer.wantedFraction()) + " are wanted";
        };
    }

    /** Whether the scenes begin with what is wanted, as far as is printed, so that charge is not what is lacking. */
    private boolean isCharged() {
        return answer.outcome().settledFraction().orElse(0) >= answer.wantedFraction() - SAME_PRINTED;
    }

    private String remedy() {
        if (answer.longerDriveS().isPresent()) {
            return " " + PlainText.time(answer.longerDriveS().getAsDouble()) + " more of driving a day would do"
                    + (answer.idleRpm().isPresent() ? ", or an idle of " + idle() : "") + ".";
        }
        if (answer.idleRpm().isPresent()) {
            return " An idle of " + idle() + " at its scenes would do.";
        }
        if (isCharged()) {
            return " It is not charge that is lacking: look at the cutoff's setting and at the battery's size.";
        }
        return " Not even " + PlainText.time(answer.mostLongerS())
                + " more of driving a day would do: look at a charger while it is parked, at what it draws there, and at the"
                + " battery's size.";
    }

    private String idle() {
        return RechargeWords.speed(answer.idleRpm().orElseThrow());
    }

    private static String settled(ShiftOutcome outcome) {
        OptionalDouble settled = outcome.settledFraction();
        return settled.isPresent() ? PlainText.percent(settled.getAsDouble()) : "an unknown charge";
    }

    /** The answer as a key figure. */
    KeyFigure figure() {
        String more = answer.longerDriveS().isPresent()
                ? PlainText.time(answer.longerDriveS().getAsDouble()) + " more of driving a day would do"
                : "";
        return new KeyFigure("Shift pattern", answer.keepsUp() ? "keeps up" : "does not keep up", more);
    }

    /** Why, in sentences. */
    List<String> reasons() {
        List<String> reasons = new ArrayList<>();
        List<SceneCharge> scenes = answer.outcome().scenes();
        if (!scenes.isEmpty()) {
            reasons.add("In the pattern of "
                    + PlainText.count(answer.outcome().roster().pattern().size(), "day") + ", run for "
                    + PlainText.count(answer.outcome().roster().days(), "day") + ", the first scene begins with "
                    + PlainText.percent(scenes.get(0).leastFraction()) + " and the last with "
                    + PlainText.percent(scenes.get(scenes.size() - 1).leastFraction())
                    + "; the lowest of all is "
                    + PlainText.percent(scenes.stream()
                            .mapToDouble(SceneCharge::leastFraction)
                            .min()
                            .orElseThrow())
                    + ".");
        }
        answer.longer()
                .ifPresent(longer -> reasons.add("Driving "
                        + PlainText.time(answer.longerDriveS().orElseThrow())
                        + " longer on each day that has a drive, shared among its drives and at the cost of parked"
                        + " time, the last scenes begin with "
                        + settled(longer) + " or more."));
        if (answer.idles() && !answer.keepsUp() && answer.idleRpm().isEmpty()) {
            reasons.add("A faster idle at its scenes, up to 2000 /min, does not make it keep up.");
        }
        return reasons;
    }

    /**
     * The words above the picture.
     *
     * @param pair whether the vehicle has two batteries
     */
    public Heading heading(boolean pair) {
        return new Heading(
                answer.keepsUp() ? sentence() : PATTERN + "does not keep up: " + fate() + ".",
                "State of charge as each scene begins"
                        + (pair ? "; of the two batteries, that of the one that has less." : "."));
    }
}
