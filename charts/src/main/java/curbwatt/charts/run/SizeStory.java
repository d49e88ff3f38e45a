package curbwatt.charts.run;

import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.study.Question;
import curbwatt.engine.study.RunPool;
import curbwatt.engine.study.StudyWatch;
import curbwatt.engine.study.size.Candidate;
import curbwatt.engine.study.size.SizePlan;
import curbwatt.engine.study.size.SizeResult;
import curbwatt.engine.study.size.SizeStudy;
import curbwatt.scenarios.assemble.ReadyScenario;
import java.util.List;
import java.util.Objects;

/**
 * A scenario whose battery was sized.
 *
 * @param scenario the scenario
 * @param result what came of it
 */
public record SizeStory(ReadyScenario scenario, SizeResult result) {

    /** Refuses missing parts. */
    public SizeStory {
        Objects.requireNonNull(scenario, "scenario");
        Objects.requireNonNull(result, "result");
    }

    /**
     * Sizes the battery.
     *
     * @param plan age, temperature and odds
     * @param candidates batteries that the fleet can buy
     */
    public static SizeStory run(
            ReadyScenario scenario, SizePlan plan, List<Candidate> candidates, RunPool pool, StudyWatch watch) {
        Question question = new Question(Simulation.of(scenario.vehicle(), scenario.scene()), scenario.requirements());
        return new SizeStory(scenario, new SizeStudy(question, plan, candidates).run(pool, watch));
    }
}
