package curbwatt.engine.study.settings;

import curbwatt.engine.control.RecloseRule;
import java.util.List;
import java.util.Optional;

/**
 * Every setting tried, in order: by rule of closing, then by trip level, then by delay.
 *
 * @param recloses the rules of closing tried, at least one
 * @param tripLevelsV the trip levels (V), rising
 * @param tripDelaysS the delays (s), rising
 * @param cells one for each of their combinations
 */
public record SettingsMap(
        List<RecloseRule> recloses, List<Double> tripLevelsV, List<Double> tripDelaysS, List<Cell> cells) {

    /** Copies the lists; refuses a map with holes. */
    public SettingsMap {
        recloses = List.copyOf(recloses);
        tripLevelsV = List.copyOf(tripLevelsV);
        tripDelaysS = List.copyOf(tripDelaysS);
        cells = List.copyOf(cells);
        int all = recloses.size() * tripLevelsV.size() * tripDelaysS.size();
        if (cells.size() != all) {
            throw new IllegalArgumentException("cells number " + cells.size() + "; the map has " + all);
        }
    }

    /** The cell at a place; empty: outside. */
    public Optional<Cell> at(int rule, int level, int delay) {
        boolean inside = rule >= 0
                && rule < recloses.size()
                && level >= 0
                && level < tripLevelsV.size()
                && delay >= 0
                && delay < tripDelaysS.size();
        return inside
                ? Optional.of(cells.get((rule * tripLevelsV.size() + level) * tripDelaysS.size() + delay))
                : Optional.empty();
    }

    /** The cells of one rule of closing. */
    public List<Cell> ofRule(int rule) {
        int size = tripLevelsV.size() * tripDelaysS.size();
        return cells.subList(rule * size, (rule + 1) * size);
    }

    /** The setting that opens last of all: the lowest trip level with the longest delay. */
    public TripSetting mildest() {
        return at(0, 0, tripDelaysS.size() - 1).orElseThrow().setting();
    }

    /** The settings that work. */
    public List<Cell> working() {
        return cells.stream().filter(Cell::works).toList();
    }
}
