package curbwatt.engine.study.size;

import curbwatt.engine.verdict.Requirement;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * What came out of the sizing.
 *
 * @param seat the battery that was sized
 * @param nowAh 20 h capacity of the one that sits there now (Ah)
 * @param plan what it was sized for
 * @param requirements what was asked
 * @param circuits circuits that are to be held
 * @param requiredS how long (s)
 * @param stated the stated conditions
 * @param steps the need as the conditions grow harder
 * @param outcomes batteries of the list, from the smallest
 * @param chosen the smallest of them that holds at the odds; empty: none does, or there is no list
 * @param curves hold time against size, about the need; about the present size where no size holds
 * @param paper the size by the paper method; empty: the battery carries nothing
 */
public record SizeResult(
        Seat seat,
        double nowAh,
        SizePlan plan,
        List<Requirement> requirements,
        Set<String> circuits,
        double requiredS,
        Conditions stated,
        Steps steps,
        List<CandidateOutcome> outcomes,
        Optional<CandidateOutcome> chosen,
        List<HoldCurve> curves,
        Optional<PaperSize> paper) {

    /**
     * The need as the conditions grow harder, one at a time.
     *
     * @param asNewWarm a new battery at 25 °C
     * @param asNew a new battery at the stated temperature
     * @param stated the stated age and temperature
     * @param atOdds so that the stated share of the draws holds
     * @param drawNeedsAh what each draw needs, rising (Ah); infinite: no size holds in it
     */
    public record Steps(Need asNewWarm, Need asNew, Need stated, Need atOdds, List<Double> drawNeedsAh) {

        /** Copies the list. */
        public Steps {
            Objects.requireNonNull(asNewWarm, "asNewWarm");
            Objects.requireNonNull(asNew, "asNew");
            Objects.requireNonNull(stated, "stated");
            Objects.requireNonNull(atOdds, "atOdds");
            drawNeedsAh = List.copyOf(drawNeedsAh);
        }
    }

    /** Copies the lists. */
    public SizeResult {
        Objects.requireNonNull(seat, "seat");
        Objects.requireNonNull(plan, "plan");
        requirements = List.copyOf(requirements);
        circuits = Set.copyOf(circuits);
        Objects.requireNonNull(stated, "stated");
        Objects.requireNonNull(steps, "steps");
        outcomes = List.copyOf(outcomes);
        Objects.requireNonNull(chosen, "chosen");
        curves = List.copyOf(curves);
        Objects.requireNonNull(paper, "paper");
    }
}
