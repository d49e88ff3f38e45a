package curbwatt.engine.study.settings;

import java.util.Objects;

/**
 * A setting in the map, and what a run says of it.
 *
 * @param rule place of its rule of closing among those tried
 * @param level place of its trip level, counted from the lowest
 * @param delay place of its delay, counted from the shortest
 * @param setting the setting
 * @param fate what the run says
 */
public record Cell(int rule, int level, int delay, TripSetting setting, Fate fate) {

    /** Refuses missing parts. */
    public Cell {
        Objects.requireNonNull(setting, "setting");
        Objects.requireNonNull(fate, "fate");
    }

    /** Whether it meets everything that is asked of the vehicle as it stands in the scenario. */
    public boolean works() {
        return fate.isMet();
    }
}
