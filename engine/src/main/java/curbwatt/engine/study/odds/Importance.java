package curbwatt.engine.study.odds;

import java.util.Objects;
import java.util.Optional;

/**
 * How much an outcome depends on an input.
 *
 * @param input the input
 * @param rank rank correlation over all draws
 * @param share its share of the outcome's variance, if that was asked for
 */
public record Importance(Input input, RankCorrelation rank, Optional<VarianceShare> share) {

    /** Refuses missing parts. */
    public Importance {
        Objects.requireNonNull(input, "input");
        Objects.requireNonNull(rank, "rank");
        Objects.requireNonNull(share, "share");
    }

    /** Size by which inputs are compared: the share of the variance if it is known, else the size of the correlation. */
    public double weightRatio() {
        return share.map(VarianceShare::firstFraction).orElseGet(() -> Math.abs(rank.rhoRatio()));
    }
}
