package curbwatt.engine.protection;

import curbwatt.engine.quantity.Require;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * Settings of a pack's own protection.
 *
 * <p>Each limit acts for itself; a direction is open while any limit that stops it is passed. A pack that refuses to be
 * discharged may still be charged, and the other way round.
 *
 * @param limits one for each reason
 * @param charging what the pack asks of a charger
 */
public record PackProtection(Map<Reason, Limit> limits, ChargingWindow charging) {
    /** Refuses a missing limit, a wrong unit, and a release beyond its trip. */
    public PackProtection {
        Objects.requireNonNull(charging, "charging");
        for (Reason reason : Reason.values()) {
            Limit limit = limits.get(reason);
            Objects.requireNonNull(limit, () -> "limit for " + reason);
            if (!limit.unit().equals(reason.quantity.unit)) {
                throw new IllegalArgumentException(
                        "unit of " + reason + " is " + limit.unit() + ", allowed is " + reason.quantity.unit);
            }
            double least = reason.upper ? -Double.MAX_VALUE : limit.trip();
            double most = reason.upper ? limit.trip() : Double.MAX_VALUE;
            Require.inside("release of " + reason, limit.release(), least, most, limit.unit());
        }
        limits = Collections.unmodifiableMap(new EnumMap<>(limits));
    }

    /**
     * Returns the protection usual for a pack.
     *
     * <p>Voltages: cut off at 10.0 V, discharged again from 10.5 V up; no charge above 15.2 V, charged again from 14.4
     * V down (a
     * maker's public table of settings). Delays: 5 s and 1 s (a public data sheet of a four-cell board: 4 to 6 s, 0.5
     * to 2 s).
     * Currents: twice the continuous one for 1 s (the same: two to three times, 0.5 to 1.5 s), another try after 30 s
     * (common
     * practice). Temperatures: charge 0 to 45 °C, discharge −20 to 60 °C (a public data sheet of a 12.8 V pack), each
     * with 5 K to
     * come back (common practice). Charging voltage 14.2 to 14.6 V, current half the capacity in an hour (common
     * practice).
     *
     * @param capacityAh capacity, Ah
     * @param continuousA discharging current that the pack is rated for, A
     */
    public static PackProtection usual(double capacityAh, double continuousA) {
        Require.positive("capacityAh", capacityAh, "Ah");
        Require.positive("continuousA", continuousA, "A");
        double chargeA = 0.5 * capacityAh;
        Map<Reason, Limit> limits = new EnumMap<>(Reason.class);
        limits.put(Reason.UNDER_VOLTAGE, Limit.volts(10.0, 10.5, 5, 5));
        limits.put(Reason.OVER_VOLTAGE, Limit.volts(15.2, 14.4, 1, 1));
        limits.put(Reason.DISCHARGE_CURRENT, Limit.amperes(2 * continuousA, 1, 30));
        limits.put(Reason.CHARGE_CURRENT, Limit.amperes(2 * chargeA, 1, 30));
        limits.put(Reason.CHARGE_COLD, Limit.celsius(0, 5));
        limits.put(Reason.CHARGE_HEAT, Limit.celsius(45, 40));
        limits.put(Reason.DISCHARGE_COLD, Limit.celsius(-20, -15));
        limits.put(Reason.DISCHARGE_HEAT, Limit.celsius(60, 55));
        return new PackProtection(limits, new ChargingWindow(14.2, 14.6, chargeA));
    }

    /** Returns the same protection with one limit replaced. */
    public PackProtection with(Reason reason, Limit limit) {
        Map<Reason, Limit> changed = new EnumMap<>(limits);
        changed.put(reason, limit);
        return new PackProtection(changed, charging);
    }

    /**
     * Returns the protection of a pack so many times the size: currents grow with it, voltages and temperatures stay.
     *
     * @param factor times the size, above 0
     */
    public PackProtection times(double factor) {
        Require.positive("factor", factor, "");
        Map<Reason, Limit> larger = new EnumMap<>(limits);
        larger.replaceAll((reason, limit) -> limit.unit().equals("A")
                ? Limit.amperes(
                        Math.min(Limit.HIGHEST_A, factor * limit.trip()), limit.tripDelayS(), limit.releaseDelayS())
                : limit);
        return new PackProtection(
                larger, new ChargingWindow(charging.leastV(), charging.mostV(), factor * charging.mostA()));
    }

    /**
     * Returns the state after a time with one reading. A delay that ends within the time counts as over at its end; ask
     * {@link #changesInS} before to stop at that instant.
     *
     * @param durationS length of the time, s, 0 or above
     */
    public ProtectionState next(ProtectionState state, PackReading reading, double durationS) {
        Require.inside("durationS", durationS, 0, Double.MAX_VALUE, "s");
        Set<Reason> reasons = EnumSet.noneOf(Reason.class);
        Map<Reason, Double> heldS = new EnumMap<>(Reason.class);
        for (Reason reason : Reason.values()) {
            boolean passed = state.reasons().contains(reason);
            if (wantsChange(reason, passed, reading)) {
                double sinceS = state.heldS().getOrDefault(reason, 0.0) + durationS;
                if (sinceS >= delayS(reason, passed)) {
                    passed = !passed;
                } else {
                    heldS.put(reason, sinceS);
                }
            }
            if (passed) {
                reasons.add(reason);
            }
        }
        return new ProtectionState(reasons, heldS);
    }

    /** Returns the time with one reading until the first limit is passed or released, s; infinity if none would be. */
    public double changesInS(ProtectionState state, PackReading reading) {
        double firstS = Double.POSITIVE_INFINITY;
        for (Reason reason : Reason.values()) {
            boolean passed = state.reasons().contains(reason);
            if (wantsChange(reason, passed, reading)) {
                double leftS = delayS(reason, passed) - state.heldS().getOrDefault(reason, 0.0);
                firstS = Math.min(firstS, Math.max(leftS, 0));
            }
        }
        return firstS;
    }

    private double delayS(Reason reason, boolean passed) {
        Limit limit = limits.get(reason);
        return passed ? limit.releaseDelayS() : limit.tripDelayS();
    }

    private boolean wantsChange(Reason reason, boolean passed, PackReading reading) {
        Limit limit = limits.get(reason);
        double found = reading.of(reason.quantity);
        boolean beyond = reason.upper ? found > limit.trip() : found < limit.trip();
        if (!passed) {
            return beyond;
        }
        return !beyond && (reason.upper ? found <= limit.release() : found >= limit.release());
    }
}
