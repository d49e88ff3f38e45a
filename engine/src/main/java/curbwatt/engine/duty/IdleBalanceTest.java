package curbwatt.engine.duty;

import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.quantity.Require;
import curbwatt.engine.result.PhaseSummary;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.scene.InitialState;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.vehicle.Vehicle;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * Idle balance test: engine idling, 93 °C under the hood, the load on; the battery may not give current on average.
 *
 * <p>The alternator's hot share is that of the vehicle's {@code HotFactor}, which is meant for running temperature; the
 * 93 °C of the scene reach the regulator and, with its own time constant, the battery.
 *
 * @param installed the vehicle
 * @param rule whose test
 * @param circuits names of the circuits that make up the load that the rule asks for
 * @param idleRpm engine speed (1/min): low idle for the fire apparatus rule, at most the maker's high idle for the
 *     ambulance
 */
public record IdleBalanceTest(Vehicle installed, Rule rule, Set<String> circuits, double idleRpm) implements DutyTest {

    /** Under-hood temperature of both rules (°C): 200 °F. */
    public static final double UNDER_HOOD_C = 93;

    private static final double SETTLING_S = 300;
    private static final double TEST_S = 1800;
    private static final double START_C = 25;
    private static final String BALANCE = "balance";

    /** Whose test. */
    public enum Rule {
        /** The minimum continuous load at idle. */
        FIRE_APPARATUS(
                "Idle balance test (NFPA 1901 as recalled)",
                "NFPA 1901, minimum continuous load at idle at 93 °C under the hood",
                DutyCriterion.Obtained.RECALLED),
        /** The maximum load at not more than the maker's high idle. */
        AMBULANCE(
                "Idle balance test (KKK-A-1822E)",
                "Federal specification KKK-A-1822E, page 33: no battery discharge at 93 °C (200 °F) under the hood",
                DutyCriterion.Obtained.READ);

        private final String test;
        private final String source;
        private final DutyCriterion.Obtained obtained;

        Rule(String test, String source, DutyCriterion.Obtained obtained) {
            this.test = test;
            this.source = source;
            this.obtained = obtained;
        }
    }

    /** Refuses a speed out of range, circuits that are not there, and a vehicle without an alternator. */
    public IdleBalanceTest {
        Objects.requireNonNull(rule, "rule");
        circuits = Set.copyOf(circuits);
        LoadsUnderTest.in(installed, circuits);
        Require.inside("idleRpm", idleRpm, 300, 3000, "/min");
        if (installed.alternator().isEmpty()) {
            throw new IllegalArgumentException("vehicle '" + installed.name() + "' has no alternator to be tested");
        }
    }

    @Override
    public String name() {
        return rule.test;
    }

    @Override
    public Vehicle vehicle() {
        return LoadsUnderTest.in(installed, circuits);
    }

    @Override
    public Scene scene() {
        return new Scene(
                name(),
                new InitialState(1, START_C),
                List.of(
                        DutyPhase.of("settling", EngineMode.IDLING, SETTLING_S, UNDER_HOOD_C, idleRpm),
                        DutyPhase.of(BALANCE, EngineMode.IDLING, TEST_S, UNDER_HOOD_C, idleRpm)));
    }

    @Override
    public DutyCriterion criterion() {
        return new DutyCriterion(
                "mean battery current, discharging counts positive", 0, "A", rule.source, rule.obtained);
    }

    @Override
    public DutyOutcome judge(RunResult run) {
        PhaseSummary balance = DutyPhase.figures(run, BALANCE);
        return DutyOutcome.of(this, balance.meanBatteryA(), DutyPhase.staysSupplied(run, balance), balance.engineRan());
    }
}
