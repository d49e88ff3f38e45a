package curbwatt.engine.battery.label;

import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.BatteryParameters;
import curbwatt.engine.battery.Chemistry;
import curbwatt.engine.battery.DiffusionModes;
import curbwatt.engine.battery.Terminal;
import curbwatt.engine.numeric.Root;

/**
 * The model's picture of one measured 100 Ah AGM battery, and the two things that were done to it.
 *
 * <p>Capacity and exponent are such that the 20 h test gives its rated 100 Ah and the measured 10 A discharge ends at
 * its
 * 9.21 h. The resistance, 3 mΩ, is the one of 2, 3, 4 … mΩ that fits the discharge best: the battery has no cranking
 * figure.
 */
final class MeasuredBattery {
    static final double TEMPERATURE_C = 27;
    static final double DISCHARGE_A = 10;
    static final double DISCHARGE_H = 9.21;
    private static final double RATED_AH = 100;
    private static final double RESISTANCE_OHM = 0.003;
    private static final double SECONDS_PER_HOUR = 3600;

    private final Battery battery;
    private final Terminal terminal;
    private final double[] boundAh;
    private double removedAh;

    MeasuredBattery() {
        double exponent = Root.between(
                p -> new DischargeCurve(rated(p), TEMPERATURE_C, DISCHARGE_A).timeToH(10.5) - DISCHARGE_H,
                1.01,
                1.3,
                1e-10);
        battery = rated(exponent);
        terminal = battery.at(TEMPERATURE_C);
        boundAh = new double[battery.modes().size()];
    }

    private static Battery rated(double exponent) {
        double capacityAh = Root.between(
                c -> LabelTestRun.twentyHoursAh(battery(exponent, c), RATED_AH) - RATED_AH, 80, 140, 1e-10);
        return battery(exponent, capacityAh);
    }

    private static Battery battery(double exponent, double capacityAh) {
        ModeFit fit = ModeFit.of(new PeukertLaw(capacityAh, 20, exponent));
        DiffusionModes modes = fit.modes(Chemistry.AGM.constants().charge().modeFactor());
        return Battery.asNew(new BatteryParameters(
                Chemistry.AGM, RATED_AH, capacityAh, fit.totalChargeAh(), exponent, modes, RESISTANCE_OHM));
    }

    Battery battery() {
        return battery;
    }

    /** Starts at rest with a charge removed. */
    MeasuredBattery emptied(double removed) {
        removedAh = removed;
        return this;
    }

    void draw(double mainA, double durationS) {
        battery.modes().advance(boundAh, mainA, durationS);
        removedAh += mainA * durationS / SECONDS_PER_HOUR;
    }

    double voltageV(double mainA) {
        double bound = 0;
        for (double x : boundAh) {
            bound += x;
        }
        return terminal.voltageV(removedAh, bound, mainA);
    }

    /** Terminal voltage while a charger pushes a current, part of which gasses, V. */
    double chargingV(double chargerA) {
        return voltageV(-mainA(chargerA));
    }

    /** Charging current of the main reaction when the charger's current is given, A. */
    double mainA(double chargerA) {
        return Root.between(a -> a + terminal.gassingA(Math.min(voltageV(-a), 18)) - chargerA, 0, chargerA, 1e-10);
    }

    /** Charging current of the main reaction at a held voltage, A. */
    double heldMainA(double heldV, double mostA) {
        return Root.between(a -> Math.min(voltageV(-a), 100) - heldV, 0, mostA, 1e-10);
    }

    double gassingA(double voltageV) {
        return terminal.gassingA(voltageV);
    }
}
