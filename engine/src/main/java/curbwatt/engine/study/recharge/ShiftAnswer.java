package curbwatt.engine.study.recharge;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Whether the shift pattern keeps up, and what would make it.
 *
 * @param fromFile whether the pattern is the file's roster
 * @param wantedFraction least charge before a scene that counts as keeping up
 * @param outcome what becomes of the batteries
 * @param longerDriveS how much longer each day that has drives must drive (s); empty: no time left of the day is enough,
 *     or none is needed
 * @param mostLongerS how much longer it could (s)
 * @param longer what becomes of them then
 * @param idleRpm lowest idle speed at its scenes that makes it keep up (1/min); empty: none, it does not idle, or none is
 *     needed
 * @param idles whether the engine idles at its scenes
 */
public record ShiftAnswer(
        boolean fromFile,
        double wantedFraction,
        ShiftOutcome outcome,
        OptionalDouble longerDriveS,
        double mostLongerS,
        Optional<ShiftOutcome> longer,
        OptionalDouble idleRpm,
        boolean idles) {

    /** Least charge before a scene where none is asked for: below, lead that is cycled daily ages fast; our judgement. */
    public static final double USUAL_WANTED_FRACTION = 0.8;

    private static final double MINUTE_S = 60;

    /** Refuses missing parts. */
    public ShiftAnswer {
        Objects.requireNonNull(outcome, "outcome");
        Objects.requireNonNull(longerDriveS, "longerDriveS");
        Objects.requireNonNull(longer, "longer");
        Objects.requireNonNull(idleRpm, "idleRpm");
    }

    /** Whether it keeps up as it is. */
    public boolean keepsUp() {
        return outcome.keepsUp(wantedFraction);
    }

    static ShiftAnswer of(Shifts shifts, boolean fromFile, double wantedFraction) {
        ShiftOutcome outcome = shifts.outcome();
        double mostLongerS = shifts.mostLongerS();
        OptionalDouble longerS = OptionalDouble.empty();
        OptionalDouble idleRpm = OptionalDouble.empty();
        if (!outcome.keepsUp(wantedFraction)) {
            var minutes = LeastStep.least(
                    Math.max(1, (int) Math.ceil(shifts.leastLongerS() / MINUTE_S)),
                    (int) (mostLongerS / MINUTE_S),
                    minute -> shifts.drivingLonger(minute * MINUTE_S).outcome().keepsUp(wantedFraction));
            longerS = minutes.isPresent() ? OptionalDouble.of(minutes.getAsInt() * MINUTE_S) : OptionalDouble.empty();
            idleRpm = shifts.idles()
                    ? LeastStep.lowestRpm(rpm -> shifts.idlingAt(rpm).outcome().keepsUp(wantedFraction))
                    : OptionalDouble.empty();
        }
        return new ShiftAnswer(
                fromFile,
                wantedFraction,
                outcome,
                longerS,
                mostLongerS,
                longerS.isPresent()
                        ? Optional.of(
                                shifts.drivingLonger(longerS.getAsDouble()).outcome())
                        : Optional.empty(),
                idleRpm,
                shifts.idles());
    }
}
