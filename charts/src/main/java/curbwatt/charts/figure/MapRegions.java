package curbwatt.charts.figure;

import curbwatt.engine.study.settings.Cell;
import curbwatt.engine.study.settings.FailureKind;
import curbwatt.engine.study.settings.SettingsMap;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Where in a map the name of a region fits.
 *
 * @param map the map
 * @param rule which rule of closing
 */
record MapRegions(SettingsMap map, int rule) {

    /**
     * A run of cells of one kind in a row.
     *
     * @param fromLevel its first level
     * @param toLevel its last level
     * @param delay its row
     */
    record Run(int fromLevel, int toLevel, int delay) {

        int length() {
            return toLevel - fromLevel + 1;
        }

        double middle() {
            return (fromLevel + toLevel) / 2.0;
        }
    }

    /**
     * Places for a name: the widest runs that the rows above and below share, the one in the middle first.
     *
     * @param kind the region; null: settings that work
     */
    List<Run> places(FailureKind kind) {
        List<Run> runs = new ArrayList<>();
        for (int delay = 0; delay < map.tripDelaysS().size(); delay++) {
            runsIn(delay, kind, runs);
        }
        int widest = runs.stream().mapToInt(Run::length).max().orElse(0);
        List<Run> wide = runs.stream()
                .filter(run -> run.length() >= 0.8 * widest)
                .sorted(Comparator.comparingInt(Run::delay).thenComparingInt(Run::fromLevel))
                .toList();
        int middle = wide.size() / 2;
        return IntStream.range(0, wide.size())
                .boxed()
                .sorted(Comparator.comparingInt(place -> Math.abs(place - middle)))
                .map(wide::get)
                .toList();
    }

    private void runsIn(int delay, FailureKind kind, List<Run> runs) {
        int from = -1;
        for (int level = 0; level <= map.tripLevelsV().size(); level++) {
            boolean is =
                    map.at(rule, level, delay).filter(cell -> is(cell, kind)).isPresent();
            if (is && from < 0) {
                from = level;
            } else if (!is && from >= 0) {
                runs.add(new Run(from, level - 1, delay));
                from = -1;
            }
        }
    }

    private static boolean is(Cell cell, FailureKind kind) {
        return MapGround.kind(cell) == kind;
    }
}
