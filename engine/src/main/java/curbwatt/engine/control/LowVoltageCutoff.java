package curbwatt.engine.control;

import curbwatt.engine.quantity.Require;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Settings of a voltage monitor that disconnects circuits.
 *
 * <p>The sensed voltage plus the sensor's error passes a first-order filter. The contact opens when the filtered
 * reading
 * has been below {@code tripV} for {@code tripDelayS} without a break; any excursion above starts the delay anew.
 *
 * @param name unique within the vehicle
 * @param sense where the voltage is taken
 * @param filterTimeConstantS time constant of the filter (s), 0 … 600; 0: none
 * @param sensorErrorV what the sensor reads too much (V), −1 … 1
 * @param warningV level below which it warns, if it warns
 * @param tripV trip level (V), 6 … 14
 * @param tripDelayS unbroken time below the trip level before the contact opens (s), 0 … 3600
 * @param reclose what closes the contact again
 * @param runTimeLimitS longest time with the engine off before the contact opens (s), if there is such a limit
 * @param circuits names of the circuits it disconnects, at least one
 */
public record LowVoltageCutoff(
        String name,
        SensePoint sense,
        double filterTimeConstantS,
        double sensorErrorV,
        OptionalDouble warningV,
        double tripV,
        double tripDelayS,
        RecloseRule reclose,
        OptionalDouble runTimeLimitS,
        Set<String> circuits) {

    /** Refuses figures out of range, a warning below the trip level, a reclose level not above it, and no circuits. */
    public LowVoltageCutoff {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(sense, "sense");
        Require.inside("filterTimeConstantS", filterTimeConstantS, 0, 600, "s");
        Require.inside("sensorErrorV", sensorErrorV, -1, 1, "V");
        Require.inside("tripV", tripV, 6, 14, "V");
        Require.inside("tripDelayS", tripDelayS, 0, 3600, "s");
        runTimeLimitS.ifPresent(limitS -> Require.inside("runTimeLimitS", limitS, 1, 30 * 86400.0, "s"));
        if (warningV.isPresent()) {
            Require.inside("warningV", warningV.getAsDouble(), tripV, 16, "V");
        }
        if (reclose instanceof RecloseRule.AboveVoltage above && above.levelV() <= tripV) {
            throw new IllegalArgumentException(
                    "recloseV is " + above.levelV() + " V; it must lie above tripV, " + tripV + " V");
        }
        circuits = Set.copyOf(circuits);
        if (circuits.isEmpty()) {
            throw new IllegalArgumentException("circuits is empty; a cutoff must disconnect at least one circuit");
        }
    }

    /** The same monitor with another trip level (V) and delay (s). */
    public LowVoltageCutoff tripping(double otherTripV, double otherDelayS) {
        return new LowVoltageCutoff(
                name,
                sense,
                filterTimeConstantS,
                sensorErrorV,
                warningV,
                otherTripV,
                otherDelayS,
                reclose,
                runTimeLimitS,
                circuits);
    }

    /**
     * The same monitor with another trip level (V), delay (s) and rule of closing. A warning level that would lie below
     * the trip level moves up to it.
     */
    public LowVoltageCutoff tripping(double otherTripV, double otherDelayS, RecloseRule otherRule) {
        return new LowVoltageCutoff(
                name,
                sense,
                filterTimeConstantS,
                sensorErrorV,
                warningV.isPresent()
                        ? OptionalDouble.of(Math.max(warningV.getAsDouble(), otherTripV))
                        : OptionalDouble.empty(),
                otherTripV,
                otherDelayS,
                otherRule,
                runTimeLimitS,
                circuits);
    }

    /** The same monitor with a sensor that reads so much too high (V). */
    public LowVoltageCutoff readingTooHighBy(double otherErrorV) {
        return new LowVoltageCutoff(
                name,
                sense,
                filterTimeConstantS,
                otherErrorV,
                warningV,
                tripV,
                tripDelayS,
                reclose,
                runTimeLimitS,
                circuits);
    }

    /** The same monitor with another rule of closing, and perhaps another warning level. */
    public LowVoltageCutoff closing(RecloseRule otherRule, OptionalDouble otherWarningV) {
        return new LowVoltageCutoff(
                name,
                sense,
                filterTimeConstantS,
                sensorErrorV,
                otherWarningV,
                tripV,
                tripDelayS,
                otherRule,
                runTimeLimitS,
                circuits);
    }
}
