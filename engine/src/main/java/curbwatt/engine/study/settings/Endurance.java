package curbwatt.engine.study.settings;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicReference;

/**
 * Finds what changes of the vehicle settings stand. The changes under which most settings failed are tried first: settings
 * side by side mostly fail alike, and one failure is all it takes to know. What stands a change stands less of it too. That,
 * and {@link QuietRuns}, bear on how many runs are made.
 */
final class Endurance {
    private final Trial trial;
    private final TripSetting mildest;
    private final Map<Change, QuietRuns> runs = new ConcurrentHashMap<>();
    private final Map<Known, Double> stood = new ConcurrentHashMap<>();
    private final AtomicReference<List<Direction>> order = new AtomicReference<>(List.of(Direction.values()));

    private record Change(Direction direction, double distanceFactor) {}

    private record Known(TripSetting setting, Direction direction) {}

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

    /**
     * The first direction tried in which a setting fails at a distance; empty: it stands them all.
     *
     * @param beyond where all but the first direction are tried to begin with, at the distance or little beyond: what is stood
     *     there is not asked again
     */
    Optional<Direction> failing(TripSetting setting, double distance, double beyond) {
        List<Direction> all = order.get();
        return all.stream()
                .filter(direction ->
                        direction == all.get(0) || beyond == distance || !stands(setting, direction, beyond))
                .filter(direction -> !stands(setting, direction, distance))
                .findFirst();
    }

    /** Whether it stands a distance in one direction. */
    boolean stands(TripSetting setting, Direction direction, double distance) {
        Known known = new Known(setting, direction);
        if (stood.getOrDefault(known, 0.0) >= distance) {
            return true;
        }
        boolean stands = fate(setting, direction, distance).filter(Fate::isMet).isPresent();
        if (stands) {
            stood.put(known, distance);
        }
        return stands;
    }

    /** Where it fails at a distance, the first of the directions in their own order; empty: it stands them all. */
    Optional<Room.End> firstEnd(TripSetting setting, double distance) {
        for (Direction direction : Direction.values()) {
            if (!stands(setting, direction, distance)) {
                return Optional.of(new Room.End(direction, distance, fate(setting, direction, distance)));
            }
        }
        return Optional.empty();
    }

    /** The directions, those under which most settings failed first. */
    List<Direction> order() {
        return order.get();
    }

    /** Learns from the directions in which settings failed, or did not. */
    void learn(List<Optional<Direction>> failed) {
        Map<Direction, Integer> counts = new EnumMap<>(Direction.class);
        failed.forEach(end -> end.ifPresent(direction -> counts.merge(direction, 1, Integer::sum)));
        order.updateAndGet(before -> before.stream()
                .sorted(Comparator.comparingInt(direction -> -counts.getOrDefault(direction, 0)))
                .toList());
    }

    private Optional<Fate> fate(TripSetting setting, Direction direction, double distance) {
        return runs.computeIfAbsent(
                        new Change(direction, distance),
                        change -> new QuietRuns(tried -> trial.run(tried, direction, distance), mildest))
                .fate(setting);
    }
}
