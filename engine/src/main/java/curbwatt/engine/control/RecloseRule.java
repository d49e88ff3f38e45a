package curbwatt.engine.control;

import curbwatt.engine.quantity.Require;

/** What closes an open cutoff contact again. */
public sealed interface RecloseRule {

    /**
     * The reading has stayed at or above a level for a time without a break.
     *
     * @param levelV reclose level (V), 8 … 16
     * @param delayS time above it (s), 0 … 3600; a run takes less than 0.1 s for 0.1 s
     */
    record AboveVoltage(double levelV, double delayS) implements RecloseRule {
        /** Refuses figures out of range. */
        public AboveVoltage {
            Require.inside("recloseV", levelV, 8, 16, "V");
            Require.inside("recloseDelayS", delayS, 0, 3600, "s");
        }
    }

    /** The engine runs. */
    record EngineRunning() implements RecloseRule {}

    /** Only a hand on the switch: within a scene, never. */
    record ByHand() implements RecloseRule {}
}
