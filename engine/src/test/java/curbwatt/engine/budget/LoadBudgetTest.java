package curbwatt.engine.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.load.LoadPattern;
import curbwatt.engine.load.Loads;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.vehicle.Bench;
import curbwatt.engine.vehicle.Circuit;
import java.util.List;
import org.junit.jupiter.api.Test;

class LoadBudgetTest {
    private final Bench bench = Bench.usual()
            .with(Bench.alternator(70, 14.2, 0))
            .with(new Circuit(
                    "c",
                    0,
                    List.of(
                            Loads.power("computer", 60, "work"),
                            Loads.patterned("left", 8, Loads.flashing("k", 500, 0, 0, 100), "warn"),
                            Loads.withStandby(
                                    Loads.patterned("pump", 20, new LoadPattern.Duty(6, 60, 0, 0.5), "work"), 0.2))));

    @Test
    void aPhasesLinesSayWhatIsOnAndWhatItDraws() {
        LoadBudget budget = LoadBudget.of(bench.vehicle(), bench.off("p", 60, "work"));
        assertThat(budget.voltageV()).isEqualTo(LoadBudget.ENGINE_OFF_V);
        assertThat(budget.lines().stream().map(line -> line.load() + " " + line.on()))
                .containsExactly("computer true", "left false", "pump true");
        assertThat(budget.lines().get(0).meanA()).isCloseTo(60 / 12.2, within(1e-12));
        assertThat(budget.lines().get(1).meanA()).isZero();
        assertThat(budget.lines().get(2).meanA()).isCloseTo(0.1 * 20 + 0.9 * 0.5, within(1e-12));
        assertThat(budget.lines().get(2).peakA()).isEqualTo(20);
        assertThat(budget.peakA()).isCloseTo(60 / 12.2 + 20, within(1e-12));
        assertThat(budget.alternatorA()).isEmpty();
    }

    @Test
    void switchedOffALoadDrawsItsStandbyAlone() {
        LoadBudget budget = LoadBudget.of(bench.vehicle(), bench.off("p", 60));
        assertThat(budget.meanA()).isEqualTo(0.2);
        assertThat(budget.peakA()).isEqualTo(0.2);
    }

    @Test
    void withTheEngineRunningTheAlternatorStandsBesideTheLoads() {
        LoadBudget budget = LoadBudget.of(bench.vehicle(), bench.idling("p", 60, "work"));
        assertThat(budget.voltageV()).isEqualTo(LoadBudget.RUNNING_V);
        assertThat(budget.alternatorA()).hasValue(70);
        assertThat(budget.balanceRpm().orElseThrow()).isCloseTo(250, within(0.2));
    }

    /** What is on paper and what a run draws are one figure where the current does not depend on voltage. */
    @Test
    void aRunDrawsWhatTheBudgetSays() {
        RunResult run = bench.run(bench.off("p", 600, "warn"));
        double paperA =
                LoadBudget.of(bench.vehicle(), bench.off("p", 600, "warn")).meanA();
        assertThat(run.phases().get(0).meanLoadA()).isCloseTo(paperA, within(1e-9));
    }
}
