package curbwatt.engine.study.recharge;

import curbwatt.engine.days.RosterStudy;
import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.powertrain.EngineSpeed;
import curbwatt.engine.scene.AirTemperature;
import curbwatt.engine.scene.DayPlan;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.scene.Roster;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.simulation.StepControl;
import curbwatt.engine.study.FasterIdle;
import curbwatt.engine.study.idle.Standing;
import curbwatt.engine.vehicle.Vehicle;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * A shift pattern and what can be changed about it.
 *
 * @param vehicle the vehicle
 * @param roster its pattern
 * @param end what recharging is like
 */
record Shifts(Vehicle vehicle, Roster roster, SceneEnd end) {

    private static final int DAYS = 28;
    private static final double LEFT_PARKED_S = 600;
    private static final double SHORTEST_PHASE_S = 1;

    /** Nobody drives four hours more to charge a battery. */
    private static final double MOST_LONGER_S = 4 * 3600.0;

    /** The pattern of a file without a roster, for four weeks. */
    static Roster roster(Scene scene, CallPattern calls, SceneEnd end) {
        List<Phase> kept = end.simulation().scene().phases();
        int first = 0;
        while (first < kept.size() - 1 && kept.get(first).mode() == EngineMode.DRIVING) {
            first++;
        }
        List<Phase> day = new ArrayList<>();
        for (int call = 1; call <= calls.scenesPerDay(); call++) {
            for (Phase phase : kept.subList(first, kept.size())) {
                day.add(phase.named("call " + call + ", " + phase.name()));
            }
            day.add(end.phase("call " + call + ", drive", Way.driving(end.drivingRpm()), calls.driveS()));
        }
        return new Roster(
                scene.name(),
                scene.start(),
                List.of(DayPlan.parkedToItsEnd("Day", day, "parked", AirTemperature.constant(end.airC()), Set.of())),
                DAYS);
    }

    /** Runs it. */
    ShiftOutcome outcome() {
        SceneStarts starts = new SceneStarts(roster);
        return ShiftOutcome.of(roster, new RosterStudy(vehicle, roster).run(starts, StepControl.forDays()), starts);
    }

    /** Whether the engine idles anywhere in it. */
    boolean idles() {
        return roster.pattern().stream()
                .flatMap(day -> day.phases().stream())
                .anyMatch(phase -> phase.mode() == EngineMode.IDLING);
    }

    /** Whether it has scenes. */
    boolean hasScenes() {
        return roster.pattern().stream().flatMap(day -> day.phases().stream()).anyMatch(Standing::isStanding);
    }

    /** The same with every idle at least so fast (1/min). */
    Shifts idlingAt(double engineRpm) {
        FasterIdle faster = new FasterIdle(engineRpm);
        return with(roster.pattern().stream()
                .map(day -> new DayPlan(
                        day.name(),
                        faster.of(Simulation.of(vehicle, new Scene(day.name(), roster.start(), day.phases())))
                                .scene()
                                .phases()))
                .toList());
    }

    /**
     * How much longer every day that has drives can drive (s): what is parked but for ten minutes, as long as something is
     * left of each parked phase, and four hours at most.
     */
    double mostLongerS() {
        return roster.pattern().stream()
                .filter(day -> drives(day) > 0)
                .mapToDouble(day -> Math.min(MOST_LONGER_S, spareS(day)))
                .min()
                .orElse(0);
    }

    /** The least that gives every drive of the day with the most of them a second (s), so that it can be a phase. */
    double leastLongerS() {
        return roster.pattern().stream().mapToDouble(Shifts::drives).max().orElse(0) * SHORTEST_PHASE_S;
    }

    private static double spareS(DayPlan day) {
        double shortestS = day.phases().stream()
                .filter(phase -> phase.mode() == EngineMode.PARKED)
                .mapToDouble(Phase::durationS)
                .min()
                .orElse(SHORTEST_PHASE_S);
        double parkedS = parkedS(day);
        return Math.max(0, Math.min(parkedS - LEFT_PARKED_S, parkedS * (1 - SHORTEST_PHASE_S / shortestS)));
    }

    /** The same with each day that has drives driving longer by so much (s), shared among its drives. */
    Shifts drivingLonger(double longerS) {
        return with(roster.pattern().stream()
                .map(day -> drives(day) > 0 ? longer(day, longerS) : day)
                .toList());
    }

    private DayPlan longer(DayPlan day, double longerS) {
        double keptFraction = 1 - longerS / parkedS(day);
        List<Phase> phases = new ArrayList<>();
        for (Phase phase : day.phases()) {
            phases.add(phase.mode() == EngineMode.PARKED ? phase.lasting(keptFraction * phase.durationS()) : phase);
            if (phase.mode() == EngineMode.DRIVING) {
                phases.add(more(phase, longerS / drives(day)));
            }
        }
        return new DayPlan(day.name(), phases);
    }

    private Phase more(Phase drive, double durationS) {
        return new Phase(
                drive.name() + ", longer",
                EngineMode.DRIVING,
                durationS,
                drive.air(),
                drive.underHood(),
                EngineSpeed.constant(end.drivingRpm()),
                drive.stages());
    }

    private static long drives(DayPlan day) {
        return day.phases().stream()
                .filter(phase -> phase.mode() == EngineMode.DRIVING)
                .count();
    }

    private static double parkedS(DayPlan day) {
        return day.phases().stream()
                .filter(phase -> phase.mode() == EngineMode.PARKED)
                .mapToDouble(Phase::durationS)
                .sum();
    }

    private Shifts with(List<DayPlan> pattern) {
        return new Shifts(vehicle, new Roster(roster.name(), roster.start(), pattern, roster.days()), end);
    }
}
