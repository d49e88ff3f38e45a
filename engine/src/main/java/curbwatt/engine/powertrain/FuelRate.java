package curbwatt.engine.powertrain;

import curbwatt.engine.quantity.Require;
import java.util.Objects;

/**
 * Fuel of a standing engine: {@code burn(rpm) + slope · P / η}, P the alternator's electrical power, η its efficiency.
 *
 * <p>Straight in P and, between points, in rpm: over a step in which both run straight, the mean of the rates at its
 * ends is the exact mean. Not for driving, where the wheels take most of the fuel.
 *
 * <p>Efficiency is an input. Published: 0.67 baseline of European Commission decision 2017/785; about 0.50 in a
 * textbook
 * for a usual claw-pole machine, 0.55 in a public paper on alternators; 0.52 to 0.70 over the map of one heavy-truck
 * machine in a public laboratory's simulation data. The electrical part of the fuel is in inverse proportion to it.
 *
 * @param fuel what is burned
 * @param idle fuel without electrical load
 * @param efficiencyFraction electrical output of the alternator over shaft power taken, belt included, 0.2 … 0.95
 */
public record FuelRate(Fuel fuel, IdleBurn idle, double efficiencyFraction) {

    /** Efficiency of the European baseline alternator, decision 2017/785. */
    public static final double EUROPEAN_BASELINE_FRACTION = 0.67;

    /** Efficiency of a usual older machine, as a public paper on alternators gives it. */
    public static final double OLDER_MACHINE_FRACTION = 0.55;

    /**
     * Fuel of one warm restart (L): 1.2 mL, measured on a 1.5 L car (a public measurement); a larger engine takes more.
     */
    public static final double RESTART_LITRES = 0.0012;

    private static final double WH_PER_KWH = 1000;
    private static final double S_PER_H = 3600;

    /** Refuses an efficiency out of range. */
    public FuelRate {
        Objects.requireNonNull(fuel, "fuel");
        Objects.requireNonNull(idle, "idle");
        Require.inside("alternatorEfficiency", efficiencyFraction, 0.2, 0.95, "");
    }

    /** Fuel at an engine speed and an alternator's electrical output (L/h); nothing at rest. */
    public double litresPerH(double engineRpm, double alternatorW) {
        return engineRpm > 0 ? idle.atLitresPerH(engineRpm) + electricalLitresPerH(alternatorW) : 0;
    }

    /** The part of the fuel that the alternator's electrical output costs (L/h). */
    public double electricalLitresPerH(double alternatorW) {
        return fuel.slopeLitresPerKwh() * alternatorW / WH_PER_KWH / efficiencyFraction;
    }

    /** Carbon dioxide of an amount of fuel (g). */
    public double carbonDioxideGrams(double litres, Fuel.CarbonSet set) {
        return litres * fuel.carbonDioxideGramsPerLitre(set);
    }

    /** How long the engine idles on the fuel of one restart (s). */
    public double breakEvenS(double engineRpm, double alternatorW, double restartLitres) {
        return restartLitres / litresPerH(engineRpm, alternatorW) * S_PER_H;
    }
}
