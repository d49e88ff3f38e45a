package curbwatt.engine.control;

import curbwatt.engine.quantity.Require;
import java.util.Objects;
import java.util.Set;

/**
 * Settings of one step of shedding before the cutoff's own: circuits that go first.
 *
 * <p>It looks at the cutoff's reading, with the cutoff's filter and sensor error, and keeps the rule of the cutoff: the
 * contact opens when the reading has been below the level for the delay without a break.
 *
 * @param name unique within the vehicle
 * @param levelV level (V), 6 … 14
 * @param delayS unbroken time below it before the contact opens (s), 0 … 3600
 * @param reclose what closes the contact again
 * @param circuits names of the circuits it disconnects, at least one
 */
public record SheddingStep(String name, double levelV, double delayS, RecloseRule reclose, Set<String> circuits) {

    /** Refuses figures out of range, a reclose level not above the level, and no circuits. */
    public SheddingStep {
        Objects.requireNonNull(name, "name");
        Require.inside("shedV", levelV, 6, 14, "V");
        Require.inside("shedDelayS", delayS, 0, 3600, "s");
        Objects.requireNonNull(reclose, "reclose");
        if (reclose instanceof RecloseRule.AboveVoltage above && above.levelV() <= levelV) {
            throw new IllegalArgumentException("recloseV of step '" + name + "' is " + above.levelV()
                    + " V; it must lie above shedV, " + levelV + " V");
        }
        circuits = Set.copyOf(circuits);
        if (circuits.isEmpty()) {
            throw new IllegalArgumentException(
                    "circuits of step '" + name + "' is empty; a step must disconnect at least one circuit");
        }
    }
}
