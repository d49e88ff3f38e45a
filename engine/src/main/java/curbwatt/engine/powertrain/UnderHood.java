package curbwatt.engine.powertrain;

import curbwatt.engine.quantity.Require;

/**
 * How much warmer the air under the hood is than the air outside: it nears a settled rise while the engine runs and
 * falls away when it stands, each as an exponential, exact over a step of any length.
 *
 * <p>Left out: the short further rise after a hot engine stops, wind and vehicle speed. Figures are inputs; no
 * published source for a usual rise or time constant.
 *
 * @param settledRiseK rise after long running (K), 0 … 100
 * @param warmingS time constant while the engine runs (s), 1 … 86400
 * @param coolingS time constant while it stands (s), 1 … 86400
 */
public record UnderHood(double settledRiseK, double warmingS, double coolingS) {

    /** Refuses figures out of range. */
    public UnderHood {
        Require.inside("underHoodRiseK", settledRiseK, 0, 100, "K");
        Require.inside("underHoodWarmingS", warmingS, 1, 86400, "s");
        Require.inside("underHoodCoolingS", coolingS, 1, 86400, "s");
    }

    /** No warmer than outside. */
    public static UnderHood none() {
        return new UnderHood(0, 1, 1);
    }

    /**
     * Rise at the end of a stretch.
     *
     * @param riseK rise at its start (K)
     * @param engineRuns whether the engine runs in it
     * @param durationS its length (s)
     */
    public double nextRiseK(double riseK, boolean engineRuns, double durationS) {
        double goalK = engineRuns ? settledRiseK : 0;
        return goalK + (riseK - goalK) * Math.exp(-durationS / (engineRuns ? warmingS : coolingS));
    }
}
