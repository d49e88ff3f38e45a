package curbwatt.engine.study.recharge;

import curbwatt.engine.days.Course;
import curbwatt.engine.days.RosterResult;
import curbwatt.engine.scene.DayPlan;
import curbwatt.engine.scene.Roster;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * What becomes of the batteries in a shift pattern.
 *
 * @param roster the pattern
 * @param course where it goes
 * @param batteries names of the batteries, the starter battery first
 * @param scenes the charge before each scene, up to the day of the first failed start
 * @param failedStartDay that day; 0: there is none
 */
public record ShiftOutcome(
        Roster roster, Course course, List<String> batteries, List<SceneCharge> scenes, int failedStartDay) {

    /** Copies the lists. */
    public ShiftOutcome {
        Objects.requireNonNull(roster, "roster");
        Objects.requireNonNull(course, "course");
        batteries = List.copyOf(batteries);
        scenes = List.copyOf(scenes);
    }

    static ShiftOutcome of(Roster roster, RosterResult result, SceneStarts starts) {
        int failed = result.failedStartDay().orElse(0);
        return new ShiftOutcome(
                roster,
                result.course(),
                result.batteries().stream().map(battery -> battery.battery()).toList(),
                starts.until(failed == 0 ? Double.POSITIVE_INFINITY : failed * DayPlan.DAY_S),
                failed);
    }

    /** Least charge before a scene in the last repeat of the pattern; empty: no scene begins in it. */
    public OptionalDouble settledFraction() {
        double fromS = roster.durationS() - roster.pattern().size() * DayPlan.DAY_S;
        return scenes.stream()
                .filter(scene -> scene.timeS() >= fromS)
                .mapToDouble(SceneCharge::leastFraction)
                .min();
    }

    /** Whether the engine always starts, no cutoff has to act for good, nothing sinks, and each scene begins with so much. */
    public boolean keepsUp(double wantedFraction) {
        return course == Course.KEEPS_UP && settledFraction().orElse(1) >= wantedFraction;
    }
}
