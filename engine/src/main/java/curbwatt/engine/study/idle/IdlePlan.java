package curbwatt.engine.study.idle;

import curbwatt.engine.quantity.Require;
import curbwatt.engine.study.idle.money.Prices;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * What the ways of standing are compared by.
 *
 * @param scenesPerYear how many such scenes a year has, 1 … 10000
 * @param engineStages stages that are on while the engine runs alone
 * @param prices what things cost; empty: no money is spoken of
 */
public record IdlePlan(double scenesPerYear, Set<String> engineStages, Optional<Prices> prices) {

    /** Scenes a year, where nobody says how many: a round number for arithmetic. */
    public static final double USUAL_SCENES_PER_YEAR = 100;

    /** Copies the stages. */
    public IdlePlan {
        Require.inside("scenesPerYear", scenesPerYear, 1, 10000, "");
        engineStages = Set.copyOf(engineStages);
        Objects.requireNonNull(prices, "prices");
    }

    /** A hundred scenes a year, and no prices. */
    public static IdlePlan usual() {
        return new IdlePlan(USUAL_SCENES_PER_YEAR, Set.of(), Optional.empty());
    }
}
