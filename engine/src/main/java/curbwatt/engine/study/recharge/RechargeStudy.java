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
        List<OptionalDouble> lowest = pool.each(
                List.<Predicate<WayBack>>of(
                        way -> way.backS().isPresent(),
                        way -> way.backS().orElse(Double.POSITIVE_INFINITY) <= plan.betweenCallsS()),
                does -> LeastStep.lowestRpm(rpm -> does.test(back(Way.idling(rpm), end, missing))),
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

    private Optional<Shifts> shifts(SceneEnd end) {
        return roster.or(() -> plan.pattern()
                        .map(calls -> Shifts.roster(question.simulation().scene(), calls, end)))
                .map(pattern -> new Shifts(question.simulation().vehicle(), pattern, end));
    }

    private static WayBack back(Way way, SceneEnd end, List<Missing> missing) {
        ChargeRecorder recorder = new ChargeRecorder(end.startS());
        return WayBack.of(
                way,
                missing,
                recorder,
                asking(end.recharged(way)).answer(recorder).result());
    }

    /** Charge alone is asked for. */
    private static Question asking(Simulation simulation) {
        return new Question(simulation, List.of());
    }
}
