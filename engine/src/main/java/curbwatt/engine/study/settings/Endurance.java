package curbwatt.engine.study.settings;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Finds what changes of the vehicle settings stand. The changes under which the last settings failed are tried first:
 * settings side by side mostly fail alike, and one failure is all it takes to know. That, and {@link QuietRuns}, bear on
 * how many runs are made, never on what is found.
 */
final class Endurance {
    private final Trial trial;
    private final TripSetting mildest;
    private final List<Direction> order = new ArrayList<>(List.of(Direction.values()));
    private final Map<Change, QuietRuns> runs = new ConcurrentHashMap<>();

    private record Change(Direction direction, double distanceFactor) {}

    /**
     * Begins with the directions in their own order.
     *
     * @param trial makes the runs
     * @param mildest setting with the lowest trip level and the longest delay of all
     */
    Endurance(Trial trial, TripSetting mildest) {
        this.trial = trial;
        this.mildest = mildest;
    }

    /** Whether a setting stands a distance in every direction. */
    boolean stands(TripSetting setting, double distance) {
        return order().stream().allMatch(direction -> stands(setting, direction, distance));
    }

    /** Whether it stands a distance in one direction. */
    boolean stands(TripSetting setting, Direction direction, double distance) {
        boolean stands = fate(setting, direction, distance).filter(Fate::isMet).isPresent();
        if (!stands) {
            moveToFront(direction);
        }
        return stands;
    }

    /** Where it fails at a distance, the first of the directions in their own order; empty: it stands them all. */
    Optional<Room.End> firstEnd(TripSetting setting, double distance) {
        for (Direction direction : Direction.values()) {
            Optional<Fate> fate = fate(setting, direction, distance);
            if (fate.filter(Fate::isMet).isEmpty()) {
                return Optional.of(new Room.End(direction, distance, fate));
            }
        }
        return Optional.empty();
    }

    /** The directions, those under which the last settings failed first. */
    synchronized List<Direction> order() {
        return List.copyOf(order);
    }

    private synchronized void moveToFront(Direction direction) {
        order.remove(direction);
        order.add(0, direction);
    }

    private Optional<Fate> fate(TripSetting setting, Direction direction, double distance) {
        return runs.computeIfAbsent(
                        new Change(direction, distance),
                        change -> new QuietRuns(tried -> trial.run(tried, direction, distance), mildest))
                .fate(setting);
    }
}
