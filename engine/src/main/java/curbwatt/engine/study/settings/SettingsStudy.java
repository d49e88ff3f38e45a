package curbwatt.engine.study.settings;

import curbwatt.engine.control.LowVoltageCutoff;
import curbwatt.engine.control.RecloseRule;
import curbwatt.engine.study.Question;
import curbwatt.engine.study.RunPool;
import curbwatt.engine.study.StudyWatch;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Searches the settings of a cutoff: a run for every pair of trip level and delay, and for every rule of closing, though
 * those in which it never opens are one and the same and made once. Of those that work it recommends the one that stands
 * the largest changes of sensor, timer, age, temperature and load; where none works, it looks for the least change of
 * vehicle or duty that makes one work.
 *
 * @param question the vehicle in its scene, and what is asked
 * @param plan what is searched
 */
public record SettingsStudy(Question question, SettingsPlan plan) {

    /** Share of the work that is done when the map is. */
    private static final double MAP_SHARE = 0.3;
    /** Share of it that is done when the rooms are known. */
    private static final double ROOM_SHARE = 0.8;

    /** Refuses a question that asks nothing, and a cutoff that is not there or not named. */
    public SettingsStudy {
        if (question.requirements().isEmpty()) {
            throw new IllegalArgumentException("requirements is empty; without any, every setting would do");
        }
        cutoff(question, plan);
    }

    /**
     * Searches.
     *
     * @param pool makes the runs
     * @param watch hears how far it is
     * @param listener hears of each setting as soon as it is run
     */
    public SettingsResult run(RunPool pool, StudyWatch watch, CellListener listener) {
        LowVoltageCutoff cutoff = cutoff(question, plan);
        Trial trial = new Trial(question, cutoff.name(), plan.spread());
        CellListener one = new OneAtATime(listener);
        TripSetting present = new TripSetting(cutoff.reclose(), cutoff.tripV(), cutoff.tripDelayS());
        Fate presentFate = trial.fate(present);
        SettingsMap map = map(trial, cutoff, pool, new ShareWatch(watch, 0, MAP_SHARE), one);
        List<Cell> working = map.working();
        if (working.isEmpty()) {
            List<Remedy> remedies = new RemedySearch(trial, map, pool).all(new ShareWatch(watch, MAP_SHARE, 1));
            return new SettingsResult(
                    cutoff.name(), plan, present, presentFate, map, Map.of(), Optional.empty(), remedies);
        }
        RoomSearch rooms = new RoomSearch(new Endurance(trial, map.mildest()), pool);
        RoomSearch.Found found = rooms.among(working, new ShareWatch(watch, MAP_SHARE, ROOM_SHARE), one);
        Recommendation advice = new Adviser(map, rooms, new ShareWatch(watch, ROOM_SHARE, 1)).of(found);
        return new SettingsResult(
                cutoff.name(), plan, present, presentFate, map, found.reached(), Optional.of(advice), List.of());
    }

    private SettingsMap map(
            Trial trial, LowVoltageCutoff cutoff, RunPool pool, StudyWatch watch, CellListener listener) {
        List<RecloseRule> rules = plan.recloses().isEmpty() ? List.of(cutoff.reclose()) : plan.recloses();
        List<Spot> spots = new ArrayList<>();
        for (int rule = 0; rule < rules.size(); rule++) {
            for (int level = 0; level < plan.tripLevelsV().size(); level++) {
                for (int delay = 0; delay < plan.tripDelaysS().size(); delay++) {
                    spots.add(new Spot(rule, level, delay));
                }
            }
        }
        int mild = plan.tripDelaysS().size() - 1;
        QuietRuns runs = new QuietRuns(trial::run, new Spot(0, 0, mild).setting(rules, plan));
        List<Cell> cells = pool.each(
                spots,
                spot -> {
                    TripSetting setting = spot.setting(rules, plan);
                    Fate fate = runs.fate(setting).orElseThrow();
                    Cell cell = new Cell(spot.rule(), spot.level(), spot.delay(), setting, fate);
                    listener.judged(cell);
                    return cell;
                },
                watch);
        return new SettingsMap(rules, plan.tripLevelsV(), plan.tripDelaysS(), cells);
    }

    private static LowVoltageCutoff cutoff(Question question, SettingsPlan plan) {
        List<LowVoltageCutoff> all = question.simulation().vehicle().cutoffs();
        List<String> names = all.stream().map(LowVoltageCutoff::name).toList();
        if (all.isEmpty()) {
            throw new IllegalArgumentException("cutoff is missing: the vehicle has none");
        }
        if (plan.cutoff().isEmpty() && all.size() > 1) {
            throw new IllegalArgumentException("cutoff is not named; the vehicle has " + names);
        }
        String name = plan.cutoff().orElse(names.get(0));
        return all.stream()
                .filter(candidate -> candidate.name().equals(name))
                .findFirst()
                .orElseThrow(() ->
                        new IllegalArgumentException("cutoff '" + name + "' is not there; the vehicle has " + names));
    }

    /** A place in the map. */
    private record Spot(int rule, int level, int delay) {

        TripSetting setting(List<RecloseRule> rules, SettingsPlan plan) {
            return new TripSetting(
                    rules.get(rule),
                    plan.tripLevelsV().get(level),
                    plan.tripDelaysS().get(delay));
        }
    }

    /** Lets one thread at a time through. */
    private record OneAtATime(CellListener listener) implements CellListener {

        @Override
        public void judged(Cell cell) {
            synchronized (listener) {
                listener.judged(cell);
            }
        }

        @Override
        public void roomed(Cell cell, double room) {
            synchronized (listener) {
                listener.roomed(cell, room);
            }
        }
    }
}
