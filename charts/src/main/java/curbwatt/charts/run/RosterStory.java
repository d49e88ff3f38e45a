package curbwatt.charts.run;

import curbwatt.engine.days.RosterResult;
import curbwatt.engine.days.RosterStudy;
import curbwatt.engine.scene.Roster;
import curbwatt.engine.simulation.StepControl;
import curbwatt.scenarios.assemble.ReadyScenario;
import java.util.Objects;
import java.util.function.DoubleConsumer;

/**
 * A scenario's roster and what came of it.
 *
 * @param scenario what the roster was read from
 * @param roster what was run
 * @param result what came of it
 */
public record RosterStory(ReadyScenario scenario, Roster roster, RosterResult result) {

    /** Refuses missing parts. */
    public RosterStory {
        Objects.requireNonNull(scenario, "scenario");
        Objects.requireNonNull(roster, "roster");
        Objects.requireNonNull(result, "result");
    }

    /**
     * Runs a roster.
     *
     * @param progress hears the share of the run that is done, 0 … 1; it can't change the outcome
     */
    public static RosterStory run(ReadyScenario scenario, Roster roster, DoubleConsumer progress) {
        RosterResult result = new RosterStudy(scenario.vehicle(), roster)
                .run(new RunProgress(roster.durationS(), progress), StepControl.forDays());
        return new RosterStory(scenario, roster, result);
    }
}
