package curbwatt.engine.study.settings;

import curbwatt.engine.study.RunPool;
import curbwatt.engine.study.StudyWatch;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Looks for the settings with the most room. Distances grow in steps; a setting that fails at one is out, so that the
 * work is spent on those that may be best. Only they are then measured finely.
 *
 * @param trial puts settings to the test
 * @param pool does it in parallel
 */
record RoomSearch(Trial trial, RunPool pool) {

    /** Step in which distances grow, in multiples of the spread. */
    static final double STEP = 0.25;

    /** Distance beyond which nothing is tried: whoever stands this stands enough. */
    static final double MOST = 3;

    private static final int HALVINGS = 4;

    /**
     * What was found.
     *
     * @param reached room that each working setting has at least, by its cell; for those measured finely the room
     *     itself
     * @param best the cells with the most room, most first, then in the map's order
     */
    record Found(Map<Cell, Double> reached, List<Cell> best) {}

    /** Measures settings that work. */
    Found among(List<Cell> working, StudyWatch watch, CellListener listener) {
        Map<Cell, Double> reached = new HashMap<>();
        working.forEach(cell -> reached.put(cell, 0.0));
        List<Cell> standing = working;
        double share = 0;
        for (double distance = STEP; distance <= MOST && !standing.isEmpty(); distance += STEP) {
            double tried = distance;
            double next = share + (1 - share) / 3;
            List<Boolean> stands = pool.each(
                    standing,
                    cell -> trial.firstEnd(cell.setting(), tried).isEmpty(),
                    new ShareWatch(watch, share, next));
            share = next;
            List<Cell> left = new ArrayList<>();
            for (int i = 0; i < standing.size(); i++) {
                if (stands.get(i)) {
                    left.add(standing.get(i));
                    reached.put(standing.get(i), tried);
                    listener.roomed(standing.get(i), tried);
                }
            }
            if (left.isEmpty()) {
                break;
            }
            standing = left;
        }
        List<Cell> last = standing;
        List<Room> rooms = pool.each(last, cell -> measured(cell, reached.get(cell)), new ShareWatch(watch, share, 1));
        for (int i = 0; i < last.size(); i++) {
            reached.put(last.get(i), rooms.get(i).roomFactor());
            listener.roomed(last.get(i), rooms.get(i).roomFactor());
        }
        return new Found(
                reached,
                last.stream()
                        .sorted(Comparator.comparing((Cell cell) -> reached.get(cell))
                                .reversed())
                        .toList());
    }

    /** The room of a setting that is known to stand a distance but perhaps not the next, and where it ends. */
    Room measured(Cell cell, double reached) {
        double stands = reached;
        double fails = reached + STEP;
        if (fails > MOST) {
            return new Room(reached, Optional.empty());
        }
        Optional<Room.End> end = trial.firstEnd(cell.setting(), fails);
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (stands + fails) / 2;
            Optional<Room.End> found = trial.firstEnd(cell.setting(), middle);
            if (found.isEmpty()) {
                stands = middle;
            } else {
                fails = middle;
                end = found;
            }
        }
        return new Room(stands, end);
    }
}
