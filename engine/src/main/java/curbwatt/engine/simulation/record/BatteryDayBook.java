package curbwatt.engine.simulation.record;

import curbwatt.engine.result.BatteryDay;
import java.util.ArrayList;
import java.util.List;

/** Adds up one battery day by day, and keeps the charges at which it turned from falling to rising or back. */
final class BatteryDayBook {

    private static final double SECONDS_PER_HOUR = 3600;

    private final List<Double> turns = new ArrayList<>();
    /** How many turns there were at each day's end, the charge there included. */
    private final List<Integer> turnsByDay = new ArrayList<>();

    private final List<Double> endCharges = new ArrayList<>();
    private double charge = Double.NaN;
    private double lowestCharge = Double.POSITIVE_INFINITY;
    private double dischargedAs;
    private double chargedAs;

    /** Adds what a step gave and took, or with nothing of both the charge before the first. */
    void add(double gaveAs, double tookAs, double endCharge) {
        dischargedAs += gaveAs;
        chargedAs += tookAs;
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

    public BatteryDay day() {
        return new BatteryDay(lowestCharge, charge, dischargedAs / SECONDS_PER_HOUR, chargedAs / SECONDS_PER_HOUR);
    }

    /** Begins the next day where this one ends. */
    void nextDay() {
        turnsByDay.add(turns.size());
        endCharges.add(charge);
        lowestCharge = charge;
        dischargedAs = 0;
        chargedAs = 0;
    }

    /** Turns up to a day's end. The charge there may since have been passed on the way to a later turn. */
    public List<Double> turns(int toDay) {
        if (toDay > turnsByDay.size()) {
            return List.copyOf(turns);
        }
        List<Double> before = new ArrayList<>(turns.subList(0, turnsByDay.get(toDay - 1) - 1));
        before.add(endCharges.get(toDay - 1));
        return List.copyOf(before);
    }
}
