package curbwatt.engine.study.size;

import curbwatt.engine.study.Answer;
import curbwatt.engine.study.Question;
import curbwatt.engine.study.RunPool;
import curbwatt.engine.study.StudyWatch;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Tries the batteries of a list: each in the stated conditions; then, from the smallest that holds there, in every draw
 * until one holds in enough of them.
 *
 * @param question what is asked of the vehicle as it is
 * @param seat the battery that is sized
 * @param stated the stated conditions
 * @param draws conditions scattered about them
 * @param mustHold how many of the draws must hold
 */
record CandidateTrial(Question question, Seat seat, Conditions stated, List<Conditions> draws, int mustHold) {

    List<CandidateOutcome> of(List<Candidate> candidates, RunPool pool, StudyWatch watch) {
        List<Candidate> sorted = candidates.stream()
                .sorted(Comparator.comparingDouble(Candidate::c20Ah).thenComparing(Candidate::name))
                .toList();
        List<Answer> answers =
                pool.each(sorted, candidate -> with(candidate).of(stated).answer(), watch);
        List<CandidateOutcome> outcomes = new ArrayList<>();
        boolean found = false;
        for (int i = 0; i < sorted.size(); i++) {
            OptionalInt held = OptionalInt.empty();
            if (answers.get(i).isMet() && !found) {
                Question with = with(sorted.get(i));
                held = OptionalInt.of((int)
                        pool.each(draws, draw -> with.of(draw).answer().isMet(), watch).stream()
                                .filter(met -> met)
                                .count());
                found = held.getAsInt() >= mustHold;
            }
            outcomes.add(new CandidateOutcome(sorted.get(i), answers.get(i).firstFailure(), held));
        }
        return List.copyOf(outcomes);
    }

    /** The first that holds in enough of the draws. */
    Optional<CandidateOutcome> chosen(List<CandidateOutcome> outcomes) {
        return outcomes.stream()
                .filter(outcome -> outcome.held().isPresent() && outcome.held().getAsInt() >= mustHold)
                .findFirst();
    }

    private Question with(Candidate candidate) {
        return question.of(new OtherBattery(seat, candidate.parameters()));
    }
}
