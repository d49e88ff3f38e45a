package curbwatt.engine.days;

import curbwatt.engine.result.RunResult;
import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;

/**
 * What came out of a roster.
 *
 * @param days day by day
 * @param batteries the starter battery, then the auxiliary one if there is one
 * @param failedStartDay first day on which the engine should have started and did not; empty: there is none
 * @param lostMarginDay first day on which it would not have started, had it been asked; empty: there is none
 * @param run the whole as one run, with its events and its balances
 */
public record RosterResult(
        List<Day> days,
        List<BatteryDays> batteries,
        OptionalInt failedStartDay,
        OptionalInt lostMarginDay,
        RunResult run) {

    /** Copies the lists. */
    public RosterResult {
        days = List.copyOf(days);
        batteries = List.copyOf(batteries);
        Objects.requireNonNull(failedStartDay, "failedStartDay");
        Objects.requireNonNull(lostMarginDay, "lostMarginDay");
        Objects.requireNonNull(run, "run");
    }

    /** What becomes of the batteries. */
    public Course course() {
        if (failedStartDay.isPresent()) {
            return Course.DOES_NOT_START;
        }
        if (batteries.stream().anyMatch(battery -> battery.trend().isEmpty())) {
            return Course.TOO_SHORT;
        }
        if (batteries.stream().anyMatch(battery -> battery.trend().orElseThrow().isDown())) {
            return Course.CREEPS_DOWN;
        }
        List<Day> settled = days.subList(days.size() / 2, days.size());
        return settled.stream().anyMatch(day -> day.trips() > 0) ? Course.HELD_BY_CUTOFF : Course.KEEPS_UP;
    }

    /** On how many days a cutoff opened on low voltage. */
    public int daysWithTrips() {
        return (int) days.stream().filter(day -> day.trips() > 0).count();
    }

    /** The days up to and with that of the first failed start: what comes after is what nobody would let happen. */
    public List<Day> countedDays() {
        return days.subList(0, failedStartDay.orElse(days.size()));
    }

    /** How often a cutoff opened on low voltage. */
    public int trips() {
        return days.stream().mapToInt(Day::trips).sum();
    }
}
