package curbwatt.engine.scene;

import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A shift pattern over days: the days of the pattern one after the other, over and over.
 *
 * <p>Phases are made when they are asked for, with the day in their name ({@code day 3: night}), so that every name is
 * unique however long the roster is.
 *
 * @param name as the user calls it
 * @param start state of the battery at the start
 * @param pattern days in order, at least one
 * @param days how many days it runs, 1 … 3660
 */
public record Roster(String name, InitialState start, List<DayPlan> pattern, int days) {

    private static final int MOST_DAYS = 3660;

    /** Refuses an empty pattern and days out of range. */
    public Roster {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(start, "start");
        pattern = List.copyOf(pattern);
        if (pattern.isEmpty()) {
            throw new IllegalArgumentException("pattern is empty; a roster needs at least one day");
        }
        if (days < 1 || days > MOST_DAYS) {
            throw new IllegalArgumentException("days is " + days + ", allowed is 1 to " + MOST_DAYS);
        }
    }

    /**
     * Plan of a day.
     *
     * @param day which day, from 1
     */
    public DayPlan plan(int day) {
        if (day < 1 || day > days) {
            throw new IllegalArgumentException("day is " + day + ", allowed is 1 to " + days);
        }
        return pattern.get((day - 1) % pattern.size());
    }

    /**
     * Phases of a day, with the day in their names.
     *
     * @param day which day, from 1
     */
    public List<Phase> phases(int day) {
        return plan(day).phases().stream()
                .map(phase -> phase.named("day " + day + ": " + phase.name()))
                .toList();
    }

    /** All phases, day by day, each made when it is reached. */
    public Stream<Phase> phases() {
        return IntStream.rangeClosed(1, days).boxed().flatMap(day -> phases(day).stream());
    }

    /** Everything in one scene. */
    public Scene asScene() {
        return new Scene(name, start, phases().toList());
    }

    /** Length of the roster (s). */
    public double durationS() {
        return days * DayPlan.DAY_S;
    }
}
