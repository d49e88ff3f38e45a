package curbwatt.engine.study.settings;

import curbwatt.engine.study.RunPool;
import curbwatt.engine.study.StudyWatch;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Looks for the settings with the most room. All are tried at one distance, those that stand it at the greatest, and if none
 * stands that, distances between are halved: a setting that fails where others stand is out, so that the work is spent on those
 * that may be best.
 *
 * @param endurance puts settings to the test
 * @param pool does it in parallel
 */
record RoomSearch(Endurance endurance, RunPool pool) {

    /** Distance beyond which nothing is tried: whoever stands this stands enough. */
    static final double MOST = 3;

    /** Distance that every working setting is tried at: less is little room, and the range round the best asks for it. */
    private static final double ENOUGH = 1;

    /** Distances this near are tried as one, to begin with. */
    private static final double LITTLE = 0.25;

    /** One of so many says what the others may fail at. */
    private static final int FEW = 16;

    /** What a room is measured to. */
    private static final double FINEST = 1.0 / 64;

    /**
     * What was found.
     *
     * @param reached room that each working setting has at least, by its cell; for the best the room itself
     * @param best the cells with the most room, all of them as much, in the map's order
     */
    record Found(Map<Cell, Double> reached, List<Cell> best) {}

    /** Measures settings that work. */
    Found among(List<Cell> working, StudyWatch watch, CellListener listener) {
        Map<Cell, Double> reached = new HashMap<>();
        working.forEach(cell -> reached.put(cell, 0.0));
        List<Cell> best = working;
        double stands = 0;
        double fails = MOST + FINEST;
        double tried = ENOUGH;
        double share = 0;
        while (fails - stands > FINEST) {
            double next = share + (1 - share) / 3;
            List<Cell> left = standing(best, tried, fails, new ShareWatch(watch, share, next));
            share = next;
            for (Cell cell : left) {
                reached.put(cell, tried);
                listener.roomed(cell, tried);
            }
            if (left.isEmpty()) {
                fails = tried;
            } else {
                best = left;
                stands = tried;
            }
            // those that stand the most are done with; if none does, halving finds how far the last ones come
            tried = fails > MOST ? MOST : middle(stands, fails);
        }
        double half = RangeSearch.enough(stands);
        List<Cell> unknown =
                working.stream().filter(cell -> reached.get(cell) < half).toList();
        for (Cell cell : standing(unknown, half, half, new ShareWatch(watch, 1, 1))) {
            reached.put(cell, half);
            listener.roomed(cell, half);
        }
        return new Found(reached, best);
    }

    private List<Cell> standing(List<Cell> cells, double distance, double failed, StudyWatch watch) {
        double beyond = failed - distance <= LITTLE ? failed : distance;
        // a few say which changes to try first on the rest
        List<Cell> few = IntStream.range(0, cells.size())
                .filter(i -> i % FEW == 0)
                .mapToObj(cells::get)
                .toList();
        endurance.learn(failing(few, distance, beyond, StudyWatch.none()));
        List<Optional<Direction>> failing = failing(cells, distance, beyond, watch);
        endurance.learn(failing);
        return IntStream.range(0, cells.size())
                .filter(i -> failing.get(i).isEmpty())
                .mapToObj(cells::get)
                .toList();
    }

    private List<Optional<Direction>> failing(List<Cell> cells, double distance, double beyond, StudyWatch watch) {
        return pool.each(cells, cell -> endurance.failing(cell.setting(), distance, beyond), watch);
    }

    /** The rooms of settings among those looked at, and where they end. */
    List<Room> measured(List<Cell> cells, Found found, StudyWatch watch) {
        double best = found.reached().get(found.best().get(0));
        // where the best fail all others do
        double most = Math.min(MOST, best + FINEST);
        return pool.each(cells, cell -> measured(cell, found.reached().get(cell), most), watch);
    }

    private Room measured(Cell cell, double reached, double most) {
        double room = most;
        for (Direction direction : endurance.order()) {
            if (room > reached && !endurance.stands(cell.setting(), direction, room)) {
                room = between(cell.setting(), direction, reached, room);
            }
        }
        return new Room(room, room < MOST ? endurance.firstEnd(cell.setting(), room + FINEST) : Optional.empty());
    }

    /** How far a setting comes in one direction, by halving between what it stands and where it fails. */
    private double between(TripSetting setting, Direction direction, double stood, double failed) {
        double stands = stood;
        double fails = failed;
        while (fails - stands > FINEST) {
            double middle = middle(stands, fails);
            if (endurance.stands(setting, direction, middle)) {
                stands = middle;
            } else {
                fails = middle;
            }
        }
        return stands;
    }

    private static double middle(double stands, double fails) {
        return FINEST * Math.round((stands + fails) / 2 / FINEST);
    }
}
