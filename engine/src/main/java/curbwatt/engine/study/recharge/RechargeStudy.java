package curbwatt.engine.study.recharge;

import curbwatt.engine.scene.Roster;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.study.Question;
import curbwatt.engine.study.RunPool;
import curbwatt.engine.study.StudyWatch;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;

/**
 * How long of driving, or of idling at which speed, gives the scene's charge back; and whether the shifts keep up.
 *
 * <p>Each way is a run of the scene with the recharging after it, so that the batteries are recharged as the scene left
 * them, inside too.
 *
 * @param question the vehicle in its scene
 * @param roster its shifts, if the file has them
 * @param plan how it is recharged
 */
public record RechargeStudy(Question question, Optional<Roster> roster, RechargePlan plan) {

    /** Longest stretch of recharging that is looked at (s); a vehicle that takes longer lives on a charger. */
    private static final double LONGEST_S = 86400;

    private static final double SOON_S = 3 * 3600.0;

    /** Refuses missing parts. */
    public RechargeStudy {
        Objects.requireNonNull(question, "question");
        Objects.requireNonNull(roster, "roster");
        Objects.requireNonNull(plan, "plan");
    }

    /**
     * Carries it out.
     *
     * @param pool works on the runs
     * @param watch hears how far each family of runs is
     * @throws IllegalArgumentException if the plan's scenes and drives don't fit into a day
     */
    public RechargeResult run(RunPool pool, StudyWatch watch) {
        SceneEnd end = SceneEnd.of(question.simulation(), plan);
        Optional<Shifts> shifts = shifts(end).filter(Shifts::hasScenes);
        List<Missing> missing = Missing.of(
                end.simulation().vehicle(),
                asking(end.simulation()).answer().result().batteries(),
                plan.wantedFraction());
        List<Way> ways = new ArrayList<>(List.of(Way.driving(end.drivingRpm())));
        end.idleRpms().forEach(rpm -> ways.add(Way.idling(rpm)));
        List<WayBack> back = pool.each(ways, way -> back(way, end, missing), watch);
        List<OptionalDouble> lowest = back.get(0).isNothing()
                ? List.of(OptionalDouble.empty(), OptionalDouble.empty())
                : pool.each(
                        List.<Predicate<Way>>of(
                                way -> back(way, end, missing).backS().isPresent(),
                                way -> back(way, end, missing, plan.betweenCallsS())
                                        .backS()
                                        .isPresent()),
                        does -> LeastStep.lowestRpm(rpm -> does.test(Way.idling(rpm))),
                        watch);
        return new RechargeResult(
                plan,
                end.stages(),
                end.airC(),
                end.leftOutS(),
                back,
                lowest.get(0),
                lowest.get(1),
                shifts.map(pattern -> ShiftAnswer.of(
                        pattern, roster.isPresent(), plan.wantedFraction().orElse(ShiftAnswer.USUAL_WANTED_FRACTION))));
    }

    /**
     * Refuses a plan whose scenes and drives don't fit into a day.
     *
     * @throws IllegalArgumentException if they don't
     */
    public void checkPattern() {
        shifts(SceneEnd.of(question.simulation(), plan));
    }

    private Optional<Shifts> shifts(SceneEnd end) {
        return roster.or(() -> plan.pattern()
                        .map(calls -> Shifts.roster(question.simulation().scene(), calls, end)))
                .map(pattern -> new Shifts(question.simulation().vehicle(), pattern, end));
    }

    /** A short run first: most are back long before a day is over. */
    private WayBack back(Way way, SceneEnd end, List<Missing> missing) {
        WayBack soon = back(way, end, missing, Math.max(SOON_S, plan.betweenCallsS()));
        return soon.backS().isPresent() || !soon.started() ? soon : back(way, end, missing, LONGEST_S);
    }

    private static WayBack back(Way way, SceneEnd end, List<Missing> missing, double durationS) {
        ChargeRecorder recorder = new ChargeRecorder(end.startS());
        return WayBack.of(
                way,
                missing,
                recorder,
                asking(end.recharged(way, durationS)).answer(recorder).result());
    }

    /** Charge alone is asked for. */
    private static Question asking(Simulation simulation) {
        return new Question(simulation, List.of());
    }
}
