package curbwatt.charts.run;

import curbwatt.scenarios.assemble.ReadyScenario;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/** Sample scenarios, each run once for all tests that look at it. */
public enum SampleRun {
    /** Everything holds. */
    HOLDS(SampleScenario::holds),
    /** The cutoff opens long before the battery is low. */
    CUT_OFF_EARLY(SampleScenario::cutOffEarly),
    /** Nobody can start. */
    STRANDS(SampleScenario::strands),
    /** A radio falls silent. */
    DROPS_OUT(SampleScenario::dropsOut),
    /** The auxiliary battery behind a charge-sensing relay runs low. */
    TWO_BATTERIES(TwoBatteryScenario::relay),
    /** The auxiliary battery is charged by a charger, and the cutoff senses at the end of a feed. */
    CHARGER(TwoBatteryScenario::charger),
    /** Two heads on one clock flash in turn, without a gap. */
    IN_TURN(FlashingScenario::inTurn),
    /** Nothing is asked. */
    ASKS_NOTHING(SampleScenario::asksNothing);

    private static final Map<SampleRun, RunStory> STORIES = new ConcurrentHashMap<>();

    @SuppressWarnings("ImmutableEnumChecker") // method references without state
    private final Supplier<ReadyScenario> scenario;

    SampleRun(Supplier<ReadyScenario> scenario) {
        this.scenario = scenario;
    }

    /** The run. */
    public RunStory story() {
        return STORIES.computeIfAbsent(this, run -> run.again());
    }

    /** The same, run anew. */
    public RunStory again() {
        return new ScenarioRunner(scenario.get()).run(share -> {});
    }
}
