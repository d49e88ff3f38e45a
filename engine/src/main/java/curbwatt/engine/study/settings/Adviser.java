package curbwatt.engine.study.settings;

import curbwatt.engine.study.StudyWatch;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Chooses among the settings that work, and says why.
 *
 * @param map the map
 * @param rooms measures them
 * @param watch hears how many neighbours are measured
 */
record Adviser(SettingsMap map, RoomSearch rooms, StudyWatch watch) {

    /**
     * The setting with the most room. Of several that have as much, the one that lies deepest among them, then the one
     * that comes first in the map.
     */
    Recommendation of(RoomSearch.Found found) {
        Map<Cell, Double> reached = found.reached();
        Set<Cell> ties = Set.copyOf(found.best());
        Cell best = found.best().stream()
                .max(Comparator.comparingInt((Cell cell) -> depth(cell, ties))
                        .thenComparing(Comparator.comparingInt(Cell::rule)
                                .thenComparingInt(Cell::level)
                                .thenComparingInt(Cell::delay)
                                .reversed()))
                .orElseThrow();
        Room room = rooms.measured(List.of(best), found, StudyWatch.none()).get(0);
        List<Recommendation.SideLimit> sides = new ArrayList<>();
        for (Side side : Side.values()) {
            sides.add(new Recommendation.SideLimit(side, firstFailing(best, side)));
        }
        return new Recommendation(
                best, room, sides, new RangeSearch(map, reached).round(best), neighbours(best, found));
    }

    /** Steps from a cell to the nearest that is not among those as good, the map's edge included. */
    private int depth(Cell cell, Set<Cell> ties) {
        for (int steps = 1; ; steps++) {
            for (int level = -steps; level <= steps; level++) {
                for (int delay = -steps; delay <= steps; delay++) {
                    if (map.at(cell.rule(), cell.level() + level, cell.delay() + delay)
                            .filter(ties::contains)
                            .isEmpty()) {
                        return steps;
                    }
                }
            }
        }
    }

    private Optional<Cell> firstFailing(Cell from, Side side) {
        for (int steps = 1; ; steps++) {
            Optional<Cell> next =
                    map.at(from.rule(), from.level() + steps * side.levels(), from.delay() + steps * side.delays());
            if (next.isEmpty() || !next.get().works()) {
                return next;
            }
        }
    }

    private List<Recommendation.Neighbour> neighbours(Cell cell, RoomSearch.Found found) {
        List<Cell> around = new ArrayList<>();
        for (int level = -1; level <= 1; level++) {
            for (int delay = -1; delay <= 1; delay++) {
                if (level != 0 || delay != 0) {
                    map.at(cell.rule(), cell.level() + level, cell.delay() + delay)
                            .ifPresent(around::add);
                }
            }
        }
        List<Cell> working = around.stream().filter(Cell::works).toList();
        List<Room> measured = rooms.measured(working, found, watch);
        return around.stream()
                .map(next -> new Recommendation.Neighbour(
                        next, next.works() ? measured.get(working.indexOf(next)) : new Room(0, Optional.empty())))
                .toList();
    }
}
