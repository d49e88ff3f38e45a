package curbwatt.engine.study.odds;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * What came of all draws.
 *
 * @param plan how they were drawn
 * @param inputs the inputs that vary, in the order of a draw's values
 * @param draws in the order in which they were drawn
 * @param holdImportance what the time held depends on, the strongest first; empty: it was the same in every draw
 * @param startImportance what the restart margin depends on, the strongest first; empty: it was the same in every draw
 * @param fan courses of voltage and charge
 * @param runs number of runs made, those without a cutoff acting left out
 */
public record OddsResult(
        OddsPlan plan,
        List<Input> inputs,
        List<Draw> draws,
        List<Importance> holdImportance,
        List<Importance> startImportance,
        Fan fan,
        int runs) {

    /** In fewer draws than this on either side a ranking by the time held would rest on a handful. */
    private static final int FEW = 10;

    /** Copies the lists. */
    public OddsResult {
        Objects.requireNonNull(plan, "plan");
        inputs = List.copyOf(inputs);
        draws = List.copyOf(draws);
        holdImportance = List.copyOf(holdImportance);
        startImportance = List.copyOf(startImportance);
        Objects.requireNonNull(fan, "fan");
    }

    /** Chance that the circuits to be held are held as long as asked; empty: none is to be held. */
    public Optional<Chance> held() {
        return draws.get(0).outcome().heldFraction().isPresent()
                ? Optional.of(chance(Outcome::held))
                : Optional.empty();
    }

    /** Chance that the engine starts whenever it is looked at. */
    public Chance starts() {
        return chance(Outcome::starts);
    }

    /** Chance that it starts with the margin that is asked for. */
    public Chance enoughMargin() {
        return chance(Outcome::enoughMargin);
    }

    /** Chance that a cutoff opens on low voltage. */
    public Chance trips() {
        return chance(Outcome::tripped);
    }

    /** Chance that it opens although nothing that it guards would have been lost without it. */
    public Chance nuisance() {
        return chance(Outcome::nuisance);
    }

    /** Chance that everything asked is met. */
    public Chance met() {
        return chance(Outcome::met);
    }

    /** Times of the first opening of any cutoff, rising (s). */
    public List<Double> tripTimesS() {
        return draws.stream()
                .flatMap(draw -> draw.outcome().tripS().stream().boxed())
                .sorted()
                .toList();
    }

    /** Whether the ranking that matters is that of the time held: it fails often enough to be ranked. */
    public boolean holdDecides() {
        long lost = draws.stream().filter(draw -> !draw.outcome().held()).count();
        return lost >= FEW && !holdImportance.isEmpty();
    }

    /** The ranking that matters: of the time held where that fails often enough, else of the restart margin. */
    public List<Importance> importance() {
        return holdDecides() ? holdImportance : startImportance;
    }

    private Chance chance(Predicate<Outcome> event) {
        List<Boolean> happened =
                draws.stream().map(draw -> event.test(draw.outcome())).toList();
        return plan.sampling() == Sampling.SOBOL
                ? Chance.ofReplicates(happened)
                : Chance.ofIndependent(
                        (int) happened.stream().filter(hit -> hit).count(), happened.size());
    }
}
