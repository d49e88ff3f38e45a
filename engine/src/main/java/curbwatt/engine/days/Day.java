package curbwatt.engine.days;

import curbwatt.engine.result.BatteryDay;
import java.util.List;

/**
 * One day of a roster.
 *
 * @param day which day, from 1
 * @param plan name of its plan
 * @param batteries the starter battery, then the auxiliary one if there is one
 * @param trips how often a cutoff opened on low voltage
 * @param starts how often the engine was started
 * @param failedStarts how often it should have started and did not
 * @param engineRunS time in which it ran (s)
 * @param fuelLitres fuel taken, as a standing engine would (L); 0 if it is not known
 */
public record Day(
        int day,
        String plan,
        List<BatteryDay> batteries,
        int trips,
        int starts,
        int failedStarts,
        double engineRunS,
        double fuelLitres) {

    /** Copies the list. */
    public Day {
        batteries = List.copyOf(batteries);
    }
}
