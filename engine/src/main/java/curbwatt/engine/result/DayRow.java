package curbwatt.engine.result;

import java.util.List;

/**
 * Twenty-four hours of a run in figures.
 *
 * @param day which day, from 1
 * @param batteries the starter battery, then the auxiliary one if there is one
 * @param engineRunS time in which the engine ran (s)
 * @param fuelLitres fuel taken (L); 0 if it is not known
 */
public record DayRow(int day, List<BatteryDay> batteries, double engineRunS, double fuelLitres) {

    /** Copies the list. */
    public DayRow {
        batteries = List.copyOf(batteries);
    }
}
