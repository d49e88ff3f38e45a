package curbwatt.engine.study.settings;

import java.util.Map;

/**
 * Looks for the largest rectangle of settings with room enough round one of them.
 *
 * @param map the map
 * @param reached room that each working setting has at least
 */
record RangeSearch(SettingsMap map, Map<Cell, Double> reached) {

    /** Steps in which the room of a range is asked for, in multiples of the spread. */
    private static final double STEP = 0.25;

    /**
     * The rectangle: all of its settings have at least half of the best one's room, or stand the spread in full.
     *
     * @param cell the setting that it lies round
     */
    CoarseRange round(Cell cell) {
        double best = reached.get(cell);
        double enough = enough(best);
        int[] largest = {cell.level(), cell.level(), cell.delay(), cell.delay()};
        int most = 1;
        for (int from = cell.delay(); from >= 0; from--) {
            for (int to = cell.delay(); to < map.tripDelaysS().size(); to++) {
                int low = reach(cell, from, to, -1, enough);
                int high = reach(cell, from, to, 1, enough);
                int size = (high - low + 1) * (to - from + 1);
                if (high >= low && size > most) {
                    most = size;
                    largest = new int[] {low, high, from, to};
                }
            }
        }
        return new CoarseRange(
                map.tripLevelsV().get(largest[0]),
                map.tripLevelsV().get(largest[1]),
                map.tripDelaysS().get(largest[2]),
                map.tripDelaysS().get(largest[3]),
                most,
                enough);
    }

    /** Room that every setting of a range has: half of the best, in whole steps, but no more than 1. */
    static double enough(double best) {
        return Math.min(1, Math.floor(best / 2 / STEP) * STEP);
    }

    /** The last level on one side at which all delays have room enough; beside the cell on the other side if none. */
    private int reach(Cell cell, int fromDelay, int toDelay, int step, double enough) {
        int level = cell.level();
        while (isEnough(cell.rule(), level, fromDelay, toDelay, enough)) {
            level += step;
        }
        return level - step;
    }

    private boolean isEnough(int rule, int level, int fromDelay, int toDelay, double enough) {
        for (int delay = fromDelay; delay <= toDelay; delay++) {
            boolean has = map.at(rule, level, delay)
                    .filter(cell -> reached.getOrDefault(cell, -1.0) >= enough)
                    .isPresent();
            if (!has) {
                return false;
            }
        }
        return true;
    }
}
