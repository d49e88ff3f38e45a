package curbwatt.engine.study.size;

import curbwatt.engine.battery.BatteryParameters;
import curbwatt.engine.study.Answer;
import curbwatt.engine.study.Question;
import curbwatt.engine.study.RunPool;
import curbwatt.engine.study.StudyWatch;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * Looks for the smallest battery of a kind that meets a question.
 *
 * @param question what is asked
 * @param seat the battery that is sized
 */
record CapacitySearch(Question question, Seat seat) {

    /** Smallest and largest battery looked at (Ah). */
    static final double LEAST_AH = 5;

    static final double MOST_AH = 1280;

    private static final int RUNGS = 9;
    private static final double NEAR = Math.pow(2, 0.25);
    /** Bracket at which a search ends: one per cent. */
    private static final double TOLERANCE = 1.01;

    private record Bracket(double failsAh, Optional<Answer> failed, double holdsAh) {}

    /** The answer for a battery of the seat's kind and a size (Ah). */
    Answer answer(double c20Ah) {
        return of(c20Ah).answer();
    }

    /** The question for a battery of the seat's kind and a size (Ah). */
    Question of(double c20Ah) {
        BatteryParameters now =
                seat.in(question.simulation().vehicle()).battery().parameters();
        return question.of(new OtherBattery(seat, now.times(c20Ah / now.ratedC20Ah())));
    }

    /**
     * Searches the whole range: rungs a factor of two apart, all of them, then between the highest that fails and the
     * one above.
     */
    Need everywhere(RunPool pool, StudyWatch watch) {
        List<Double> rungs = IntStream.range(0, RUNGS)
                .mapToObj(i -> LEAST_AH * Math.pow(2, i))
                .toList();
        List<Answer> answers = pool.each(rungs, this::answer, watch);
        int fails = RUNGS - 1;
        while (fails >= 0 && answers.get(fails).isMet()) {
            fails--;
        }
        if (fails == RUNGS - 1) {
            return new Need(
                    OptionalDouble.empty(),
                    OptionalDouble.of(rungs.get(fails)),
                    answers.get(fails).firstFailure());
        }
        if (fails < 0) {
            return new Need(OptionalDouble.of(rungs.get(0)), OptionalDouble.empty(), Optional.empty());
        }
        return between(new Bracket(rungs.get(fails), Optional.of(answers.get(fails)), rungs.get(fails + 1)));
    }

    /** Searches from a size near the answer, taking for granted that a larger battery is never worse. */
    Need near(double c20Ah) {
        double failsAh = 0;
        double holdsAh = 0;
        Optional<Answer> failed = Optional.empty();
        double triedAh = Math.max(LEAST_AH, Math.min(MOST_AH, c20Ah));
        while (failsAh == 0 || holdsAh == 0) {
            Answer answer = answer(triedAh);
            if (answer.isMet()) {
                holdsAh = triedAh;
            } else {
                failsAh = triedAh;
                failed = Optional.of(answer);
            }
            if (!answer.isMet() && triedAh >= MOST_AH) {
                return new Need(OptionalDouble.empty(), OptionalDouble.of(failsAh), answer.firstFailure());
            }
            if (answer.isMet() && triedAh <= LEAST_AH) {
                return new Need(OptionalDouble.of(holdsAh), OptionalDouble.empty(), Optional.empty());
            }
            triedAh = Math.max(LEAST_AH, Math.min(MOST_AH, answer.isMet() ? triedAh / NEAR : triedAh * NEAR));
        }
        return between(new Bracket(failsAh, failed, holdsAh));
    }

    private Need between(Bracket start) {
        Bracket bracket = start;
        while (bracket.holdsAh() / bracket.failsAh() > TOLERANCE) {
            double middleAh = Math.sqrt(bracket.failsAh() * bracket.holdsAh());
            Answer answer = answer(middleAh);
            bracket = answer.isMet()
                    ? new Bracket(bracket.failsAh(), bracket.failed(), middleAh)
                    : new Bracket(middleAh, Optional.of(answer), bracket.holdsAh());
        }
        return new Need(
                OptionalDouble.of(bracket.holdsAh()),
                OptionalDouble.of(bracket.failsAh()),
                bracket.failed().flatMap(Answer::firstFailure));
    }
}
