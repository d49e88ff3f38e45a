package curbwatt.engine.study.odds;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Finds out which input an outcome depends on.
 *
 * @param plan how the draws were made
 * @param inputs the inputs that vary
 * @param draws the draws
 * @param outcomes of the draws; where variance shares are asked for, then of as many independent draws, then for each
 *     input of the draws with that input taken from the independent ones
 */
record Ranking(OddsPlan plan, List<Input> inputs, List<Draw> draws, List<Outcome> outcomes) {

    List<Importance> ofHold() {
        return ranked(outcome -> outcome.heldFraction().orElse(1));
    }

    List<Importance> ofStart() {
        return ranked(Outcome::restartMarginV);
    }

    private List<Importance> ranked(ToDoubleFunction<Outcome> figure) {
        double[] all = outcomes.stream().mapToDouble(figure).toArray();
        int count = draws.size();
        double[] a = Arrays.copyOfRange(all, 0, count);
        if (Arrays.stream(a).distinct().count() < 2) {
            return List.of();
        }
        List<Importance> ranked = new ArrayList<>();
        for (int i = 0; i < inputs.size(); i++) {
            int place = i;
            double[] values =
                    draws.stream().mapToDouble(draw -> draw.values().get(place)).toArray();
            Optional<VarianceShare> share = plan.indices()
                    ? Optional.of(VarianceShare.of(
                            a,
                            Arrays.copyOfRange(all, count, 2 * count),
                            Arrays.copyOfRange(all, (2 + i) * count, (3 + i) * count),
                            plan.seed() + i))
                    : Optional.empty();
            ranked.add(new Importance(inputs.get(i), RankCorrelation.of(values, a), share));
        }
        ranked.sort(Comparator.comparingDouble(Importance::weightRatio).reversed());
        return ranked;
    }
}
