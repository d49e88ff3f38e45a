package curbwatt.engine.control;

import java.util.OptionalDouble;
import java.util.Set;

/** Monitors for tests: at the node, exact, without a warning and without a run-time limit unless said otherwise. */
public final class Cutoffs {
    private Cutoffs() {}

    /** One that only a hand closes again. */
    public static LowVoltageCutoff byHand(String name, double tripV, double tripDelayS, String... circuits) {
        return of(name, 0, tripV, tripDelayS, new RecloseRule.ByHand(), circuits);
    }

    /** One with a filter and a reclose rule. */
    public static LowVoltageCutoff of(
            String name,
            double filterTimeConstantS,
            double tripV,
            double tripDelayS,
            RecloseRule reclose,
            String... circuits) {
        return new LowVoltageCutoff(
                name,
                new SensePoint.Node(),
                filterTimeConstantS,
                0,
                OptionalDouble.empty(),
                tripV,
                tripDelayS,
                reclose,
                OptionalDouble.empty(),
                Set.of(circuits));
    }

    /** The same with a warning level. */
    public static LowVoltageCutoff warning(LowVoltageCutoff cutoff, double warningV) {
        return new LowVoltageCutoff(
                cutoff.name(),
                cutoff.sense(),
                cutoff.filterTimeConstantS(),
                cutoff.sensorErrorV(),
                OptionalDouble.of(warningV),
                cutoff.tripV(),
                cutoff.tripDelayS(),
                cutoff.reclose(),
                cutoff.runTimeLimitS(),
                cutoff.circuits());
    }

    /** The same with a run-time limit. */
    public static LowVoltageCutoff limited(LowVoltageCutoff cutoff, double runTimeLimitS) {
        return new LowVoltageCutoff(
                cutoff.name(),
                cutoff.sense(),
                cutoff.filterTimeConstantS(),
                cutoff.sensorErrorV(),
                cutoff.warningV(),
                cutoff.tripV(),
                cutoff.tripDelayS(),
                cutoff.reclose(),
                OptionalDouble.of(runTimeLimitS),
                cutoff.circuits());
    }

    /** The same with its sensor elsewhere and wrong by so much. */
    public static LowVoltageCutoff sensing(LowVoltageCutoff cutoff, SensePoint sense, double sensorErrorV) {
        return new LowVoltageCutoff(
                cutoff.name(),
                sense,
                cutoff.filterTimeConstantS(),
                sensorErrorV,
                cutoff.warningV(),
                cutoff.tripV(),
                cutoff.tripDelayS(),
                cutoff.reclose(),
                cutoff.runTimeLimitS(),
                cutoff.circuits());
    }
}
