package curbwatt.charts.run;

import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.study.Question;
import curbwatt.engine.study.RunPool;
import curbwatt.engine.study.StudyWatch;
import curbwatt.engine.study.idle.IdlePlan;
import curbwatt.engine.study.idle.IdleResult;
import curbwatt.engine.study.idle.IdleStudy;
import curbwatt.engine.study.idle.IdleWay;
import curbwatt.engine.study.idle.Standing;
import curbwatt.scenarios.assemble.ReadyScenario;
import java.util.List;
import java.util.Objects;

/**
 * The ways in which a scenario's vehicle could stand, and what came of each.
 *
 * @param scenario the scenario
 * @param question what was asked of every way
 * @param result what the study found
 * @param trajectories each way's run as things are, in the order of {@link IdleWay}, named by {@link IdleWay#name()}
 */
public record IdleStory(ReadyScenario scenario, Question question, IdleResult result, List<Trajectory> trajectories) {

    /** Copies the list. */
    public IdleStory {
        Objects.requireNonNull(scenario, "scenario");
        Objects.requireNonNull(question, "question");
        Objects.requireNonNull(result, "result");
        trajectories = List.copyOf(trajectories);
    }

    /** Carries the study out, and records each way's run. */
    public static IdleStory run(ReadyScenario scenario, IdlePlan plan, RunPool pool, StudyWatch watch) {
        Question question = question(scenario);
        IdleResult result = new IdleStudy(question, plan).run(pool, watch);
        List<Trajectory> trajectories = pool.each(
                List.of(IdleWay.values()),
                way -> Trajectory.of(
                        way.name(),
                        new Standing(way, result.devices(), plan.engineStages()).of(question.simulation()),
                        scenario.traceSpacingS()),
                StudyWatch.none());
        return new IdleStory(scenario, question, result, trajectories);
    }

    /** What is asked of every way. */
    public static Question question(ReadyScenario scenario) {
        return IdleStudy.asking(
                new Question(Simulation.of(scenario.vehicle(), scenario.scene()), scenario.requirements()));
    }
}
