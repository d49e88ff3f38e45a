package curbwatt.engine.study.size;

import curbwatt.engine.battery.BatteryCondition;
import curbwatt.engine.quantity.Require;
import curbwatt.engine.simulation.Simulation;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * Age, temperature and odds that a battery is sized for.
 *
 * @param capacityHealthFraction capacity over that of the new battery; empty: 0.8, or the scenario's if that is lower
 * @param resistanceGrowthFactor resistance over that of the new battery; empty: 1.25, or the scenario's if that is
 *     higher
 * @param batteryC temperature of the batteries at the start (°C); empty: the scenario's
 * @param oddsFraction share of the draws that must hold, 0.5 … 1
 * @param draws how many draws, 1 … 1000
 * @param spread how far they lie apart
 * @param marginFactor design margin of the paper method, 1 … 3
 */
public record SizePlan(
        OptionalDouble capacityHealthFraction,
        OptionalDouble resistanceGrowthFactor,
        OptionalDouble batteryC,
        double oddsFraction,
        int draws,
        Spread spread,
        double marginFactor) {

    /** Capacity at which stationary practice replaces a battery, over that of the new one: IEEE 450. */
    public static final double REPLACED_FRACTION = 0.8;

    /** Growth of resistance taken for a battery that old: one over its capacity; common practice, no published source. */
    public static final double REPLACED_GROWTH = 1.25;

    /** Refuses figures out of range. */
    public SizePlan {
        capacityHealthFraction.ifPresent(share -> Require.inside("capacityHealthFraction", share, 0.05, 1.2, ""));
        resistanceGrowthFactor.ifPresent(factor -> Require.inside("resistanceGrowthFactor", factor, 0.5, 20, ""));
        batteryC.ifPresent(temperature -> Require.inside("batteryC", temperature, -40, 70, "°C"));
        Require.inside("oddsFraction", oddsFraction, 0.5, 1, "");
        Require.inside("draws", draws, 1, 1000, "");
        Objects.requireNonNull(spread, "spread");
        Require.inside("marginFactor", marginFactor, 1, 3, "");
    }

    /** Replaced at 80 %, the scenario's temperature, 95 of 100, 40 draws, a margin of 1.1. */
    public static SizePlan usual() {
        return new SizePlan(
                OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), 0.95, 40, Spread.usual(), 1.1);
    }

    /** How many of the draws must hold. */
    public int mustHold() {
        return (int) Math.ceil(oddsFraction * draws - 1e-9);
    }

    /** The conditions stated, before anything is spread. */
    public Conditions stated(Seat seat, Simulation simulation) {
        BatteryCondition now = seat.in(simulation.vehicle()).battery().condition();
        return new Conditions(
                seat,
                capacityHealthFraction.orElse(Math.min(REPLACED_FRACTION, now.capacityHealthFraction())),
                resistanceGrowthFactor.orElse(Math.max(REPLACED_GROWTH, now.resistanceGrowthFactor())),
                batteryC.orElse(simulation.scene().start().batteryC()),
                1);
    }
}
