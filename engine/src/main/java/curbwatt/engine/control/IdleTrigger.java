package curbwatt.engine.control;

import curbwatt.engine.quantity.Require;
import java.util.Objects;

/** What asks for a faster idle, and what lets it go again. */
public sealed interface IdleTrigger {

    /** Whether the figures ask for more engine speed. */
    boolean calls(double sensedV, double batteryA);

    /** Whether the figures let it go; never true together with {@link #calls}. */
    boolean releases(double sensedV, double batteryA);

    /**
     * The sensed voltage is low.
     *
     * @param sense where it is taken
     * @param levelV asks below (V), 8 … 15
     * @param recoveredV lets go at and above (V), above the level, up to 16
     */
    record BelowVoltage(SensePoint sense, double levelV, double recoveredV) implements IdleTrigger {
        /** Refuses figures out of range and levels that leave no hysteresis. */
        public BelowVoltage {
            Objects.requireNonNull(sense, "sense");
            Require.inside("raiseV", levelV, 8, 15, "V");
            Require.inside("recoveredV", recoveredV, 8, 16, "V");
            if (recoveredV <= levelV) {
                throw new IllegalArgumentException(
                        "recoveredV is " + recoveredV + " V; it must lie above raiseV, " + levelV + " V");
            }
        }

        @Override
        public boolean calls(double sensedV, double batteryA) {
            return sensedV < levelV;
        }

        @Override
        public boolean releases(double sensedV, double batteryA) {
            return sensedV >= recoveredV;
        }
    }

    /**
     * The battery gives current although the engine runs.
     *
     * @param levelA asks above (A), discharging counts positive, −50 … 500
     * @param recoveredA lets go at and below (A), below the level; negative: only once the battery is charged with so
     *     much
     */
    record Discharging(double levelA, double recoveredA) implements IdleTrigger {
        /** Refuses figures out of range and levels that leave no hysteresis. */
        public Discharging {
            Require.inside("raiseA", levelA, -50, 500, "A");
            Require.inside("recoveredA", recoveredA, -200, 500, "A");
            if (recoveredA >= levelA) {
                throw new IllegalArgumentException(
                        "recoveredA is " + recoveredA + " A; it must lie below raiseA, " + levelA + " A");
            }
        }

        @Override
        public boolean calls(double sensedV, double batteryA) {
            return batteryA > levelA;
        }

        @Override
        public boolean releases(double sensedV, double batteryA) {
            return batteryA <= recoveredA;
        }
    }
}
