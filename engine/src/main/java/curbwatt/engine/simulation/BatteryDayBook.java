package curbwatt.engine.simulation;

import curbwatt.engine.result.BatteryDay;
import java.util.ArrayList;
import java.util.List;

/** Adds up one battery day by day, and keeps the charges at which it turned from falling to rising or back. */
final class BatteryDayBook {

    private static final double SECONDS_PER_HOUR = 3600;

    private final List<Double> turns = new ArrayList<>();
    private double charge = Double.NaN;
    private double lowestCharge = Double.POSITIVE_INFINITY;
    private double dischargedAs;
    private double chargedAs;

    /** Adds a step, or with a length of 0 the charge before the first. */
    void add(double batteryA, double lengthS, double endCharge) {
        if (batteryA > 0) {
            dischargedAs += batteryA * lengthS;
        } else {
            chargedAs -= batteryA * lengthS;
        }
        charge = endCharge;
        lowestCharge = Math.min(lowestCharge, endCharge);
        turn(endCharge);
    }

    private void turn(double value) {
        int size = turns.size();
        if (size > 0 && value == turns.get(size - 1)) {
            return;
        }
        if (size > 1 && turns.get(size - 1) > turns.get(size - 2) == value > turns.get(size - 1)) {
            turns.set(size - 1, value);
        } else {
            turns.add(value);
        }
    }

    BatteryDay day() {
        return new BatteryDay(lowestCharge, charge, dischargedAs / SECONDS_PER_HOUR, chargedAs / SECONDS_PER_HOUR);
    }

    /** Begins the next day where this one ends. */
    void nextDay() {
        lowestCharge = charge;
        dischargedAs = 0;
        chargedAs = 0;
    }

    List<Double> turns() {
        return List.copyOf(turns);
    }
}
