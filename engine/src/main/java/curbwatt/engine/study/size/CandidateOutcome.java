package curbwatt.engine.study.size;

import curbwatt.engine.verdict.Finding;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What became of a battery of the list.
 *
 * @param candidate the battery
 * @param failure what it fails first in the stated conditions; empty: it meets everything
 * @param held in how many of the draws it met everything; empty: not asked, because it fails the stated conditions or a
 *     smaller one does already
 */
public record CandidateOutcome(Candidate candidate, Optional<Finding> failure, OptionalInt held) {

    /** Refuses missing parts. */
    public CandidateOutcome {
        Objects.requireNonNull(candidate, "candidate");
        Objects.requireNonNull(failure, "failure");
        Objects.requireNonNull(held, "held");
    }
}
