package curbwatt.engine.study.settings;

import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.study.FasterIdle;
import curbwatt.engine.study.LoadScale;
import curbwatt.engine.study.RunPool;
import curbwatt.engine.study.StudyWatch;
import curbwatt.engine.study.Variation;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;

/**
 * Looks for the least change of each kind that makes some setting work, by halving; a setting counts as found if it is
 * every second one of the map in either direction, or the map's first.
 *
 * @param trial puts settings to the test
 * @param map the map in which none works
 * @param pool does it in parallel
 */
record RemedySearch(Trial trial, SettingsMap map, RunPool pool) {

    private static final int HALVINGS = 8;
    private static final double MOST_CAPACITY_FACTOR = 4;
    private static final double LEAST_LOAD_FACTOR = 0.2;
    private static final double FASTEST_IDLE_RPM = 1800;
    private static final double USUAL_IDLE_RPM = 700;
    private static final double MOST_IDLING_FRACTION = 0.98;

    /**
     * A kind of change.
     *
     * @param amount how much at an effort of 0 … 1
     * @param change the change of so much
     */
    private record Lever(Remedy.Kind kind, String unit, DoubleUnaryOperator amount, DoubleFunction<Variation> change) {}

    /** What would help, kind by kind; kinds that don't apply are left out. */
    List<Remedy> all(StudyWatch watch) {
        List<Lever> levers = levers();
        List<Remedy> remedies = new ArrayList<>();
        for (int i = 0; i < levers.size(); i++) {
            remedies.add(remedy(
                    levers.get(i), new ShareWatch(watch, (double) i / levers.size(), (i + 1.0) / levers.size())));
        }
        return List.copyOf(remedies);
    }

    private List<Lever> levers() {
        List<Lever> levers = new ArrayList<>();
        levers.add(new Lever(
                Remedy.Kind.MORE_CAPACITY, "×", effort -> 1 + effort * (MOST_CAPACITY_FACTOR - 1), BatterySize::new));
        levers.add(
                new Lever(Remedy.Kind.LESS_LOAD, "×", effort -> 1 - effort * (1 - LEAST_LOAD_FACTOR), LoadScale::new));
        Simulation simulation = trial.question().simulation();
        if (simulation.vehicle().alternator().isPresent()) {
            OptionalDouble idleRpm = simulation.scene().phases().stream()
                    .filter(phase -> phase.mode() == EngineMode.IDLING)
                    .mapToDouble(phase -> phase.speed().lowestRpm())
                    .min();
            double slowRpm = idleRpm.orElse(USUAL_IDLE_RPM);
            if (idleRpm.isPresent() && slowRpm < FASTEST_IDLE_RPM) {
                levers.add(new Lever(
                        Remedy.Kind.FASTER_IDLE,
                        "1/min",
                        effort -> slowRpm + effort * (FASTEST_IDLE_RPM - slowRpm),
                        FasterIdle::new));
            }
            if (simulation.scene().phases().stream().map(Phase::mode).anyMatch(EngineMode.OFF::equals)) {
                levers.add(new Lever(
                        Remedy.Kind.IDLING_INSTEAD_OF_OFF,
                        "1",
                        effort -> effort * MOST_IDLING_FRACTION,
                        share -> new IdlingAtTheEnd(share, slowRpm)));
            }
        }
        return levers;
    }

    private Remedy remedy(Lever lever, StudyWatch watch) {
        double most = lever.amount().applyAsDouble(1);
        double part = 1.0 / (HALVINGS + 2);
        if (!someWorks(lever, 1, new ShareWatch(watch, 0, part))) {
            return new Remedy(lever.kind(), OptionalDouble.empty(), lever.unit(), most, Optional.empty());
        }
        double fails = 0;
        double works = 1;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (fails + works) / 2;
            if (someWorks(lever, middle, new ShareWatch(watch, (i + 1) * part, (i + 2) * part))) {
                works = middle;
            } else {
                fails = middle;
            }
        }
        double amount = lever.amount().applyAsDouble(works);
        QuietRuns changed = under(lever, works);
        List<TripSetting> settings = settings();
        List<Boolean> which =
                pool.each(settings, setting -> isMet(changed, setting), new ShareWatch(watch, 1 - part, 1));
        return new Remedy(
                lever.kind(),
                OptionalDouble.of(amount),
                lever.unit(),
                most,
                Optional.of(settings.get(middleOf(which))));
    }

    /** Whether any setting works; once one is found the others are left alone, which does not change the answer. */
    private boolean someWorks(Lever lever, double effort, StudyWatch watch) {
        QuietRuns changed = under(lever, effort);
        AtomicBoolean found = new AtomicBoolean();
        pool.each(
                settings(),
                setting -> {
                    if (!found.get() && isMet(changed, setting)) {
                        found.set(true);
                    }
                    return setting;
                },
                watch);
        return found.get();
    }

    private QuietRuns under(Lever lever, double effort) {
        Trial changed = trial.of(lever.change().apply(lever.amount().applyAsDouble(effort)));
        return new QuietRuns(changed::run, map.mildest());
    }

    private static boolean isMet(QuietRuns changed, TripSetting setting) {
        return changed.fate(setting).filter(Fate::isMet).isPresent();
    }

    private List<TripSetting> settings() {
        return map.cells().stream()
                .filter(cell -> cell.level() % 2 == 0 && cell.delay() % 2 == 0)
                .map(Cell::setting)
                .toList();
    }

    /** The place in the middle of those that are true. */
    private static int middleOf(List<Boolean> which) {
        List<Integer> places = new ArrayList<>();
        for (int i = 0; i < which.size(); i++) {
            if (which.get(i)) {
                places.add(i);
            }
        }
        return places.get(places.size() / 2);
    }
}
