package curbwatt.engine.alternator;

import curbwatt.engine.quantity.Require;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * An alternator in its vehicle.
 *
 * @param output what it can deliver, cold, by shaft speed
 * @param hotFactor share of it left at running temperature
 * @param regulator voltage it holds
 * @param pulleyRatio shaft turns for one turn of the engine, 1 … 5
 * @param rampS time after a start in which the output grows from nothing to full (s), 0 … 60
 */
public record Alternator(
        OutputCurve output, HotFactor hotFactor, VoltageRegulator regulator, double pulleyRatio, double rampS) {

    private static final double FASTEST_ENGINE_RPM = 8000;

    /** Refuses figures out of range. */
    public Alternator {
        Objects.requireNonNull(output, "output");
        Objects.requireNonNull(hotFactor, "hotFactor");
        Objects.requireNonNull(regulator, "regulator");
        Require.inside("pulleyRatio", pulleyRatio, 1, 5, "");
        Require.inside("rampS", rampS, 0, 60, "s");
    }

    /** Largest hot output at an engine speed (A). */
    public double maximumA(double engineRpm) {
        double shaftRpm = pulleyRatio * engineRpm;
        return output.maximumA(shaftRpm) * hotFactor.at(shaftRpm);
    }

    /** The same alternator with its hot output at this air under the hood (°C); empty: at running temperature. */
    public Alternator under(OptionalDouble underHoodC) {
        return underHoodC.isEmpty()
                ? this
                : new Alternator(output, hotFactor.under(underHoodC.getAsDouble()), regulator, pulleyRatio, rampS);
    }

    /** Whether the output curve is to be trusted at an engine speed. */
    public boolean isTrustedAt(double engineRpm) {
        return pulleyRatio * engineRpm >= output.trustedFromRpm();
    }

    /**
     * Lowest engine speed at which the hot output reaches a demand (1/min), to a tenth of a turn; empty if it never
     * does below 8000 /min.
     */
    public OptionalDouble balanceRpm(double demandA) {
        if (maximumA(FASTEST_ENGINE_RPM) < demandA) {
            return OptionalDouble.empty();
        }
        double below = 0;
        double above = FASTEST_ENGINE_RPM;
        while (above - below > 0.1) {
            double middle = 0.5 * (below + above);
            if (maximumA(middle) < demandA) {
                below = middle;
            } else {
                above = middle;
            }
        }
        return OptionalDouble.of(above);
    }
}
