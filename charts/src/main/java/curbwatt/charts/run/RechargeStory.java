package curbwatt.charts.run;

import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.study.Question;
import curbwatt.engine.study.RunPool;
import curbwatt.engine.study.StudyWatch;
import curbwatt.engine.study.recharge.RechargePlan;
import curbwatt.engine.study.recharge.RechargeResult;
import curbwatt.engine.study.recharge.RechargeStudy;
import curbwatt.scenarios.assemble.ReadyScenario;
import java.util.Objects;

/**
 * How a scenario's batteries are recharged.
 *
 * @param scenario the scenario
 * @param result what came of it
 */
public record RechargeStory(ReadyScenario scenario, RechargeResult result) {

    /** Refuses missing parts. */
    public RechargeStory {
        Objects.requireNonNull(scenario, "scenario");
        Objects.requireNonNull(result, "result");
    }

    /** Carries the study out. */
    public static RechargeStory run(ReadyScenario scenario, RechargePlan plan, RunPool pool, StudyWatch watch) {
        return new RechargeStory(scenario, study(scenario, plan).run(pool, watch));
    }

    /** The study, not yet carried out. */
    public static RechargeStudy study(ReadyScenario scenario, RechargePlan plan) {
        Question question = new Question(Simulation.of(scenario.vehicle(), scenario.scene()), scenario.requirements());
        return new RechargeStudy(question, scenario.roster(), plan);
    }
}
