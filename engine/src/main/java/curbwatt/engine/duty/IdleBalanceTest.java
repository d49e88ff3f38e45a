package curbwatt.engine.duty;

import curbwatt.engine.load.DropOut;
import curbwatt.engine.load.Load;
import curbwatt.engine.load.LoadPattern;
import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.quantity.Require;
import curbwatt.engine.result.PhaseSummary;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.scene.AirTemperature;
import curbwatt.engine.scene.InitialState;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.vehicle.Vehicle;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * Idle balance test: engine idling, hot air under the hood, the load on; the battery may not give current on average.
 *
 * <p>Whatever the vehicle says of its own engine space, the air there has the rule's temperature: the alternator, the
 * regulator and, with its own time constant, the battery are in it.
 *
 * @param installed the vehicle
 * @param rule whose test
 * @param circuits names of the circuits that make up the load that the rule asks for
 * @param idleRpm engine speed (1/min): low idle for the fire apparatus rule, at most the maker's high idle for the
 *     ambulance
 * @param addedA load that the rule asks for beyond the circuits, put on the starter node as a constant current (A),
 *     0 … 100
 */
public record IdleBalanceTest(Vehicle installed, Rule rule, Set<String> circuits, double idleRpm, double addedA)
        implements DutyTest {

    private static final double SETTLING_S = 300;
    private static final double TEST_S = 1800;
    private static final double START_C = 25;
    private static final String BALANCE = "balance";
    private static final String ADDED = "load added by the test";

    /** Whose test. */
    public enum Rule {
        /** The minimum continuous load at idle. */
        FIRE_APPARATUS(
                93,
                0,
                "Idle balance test (NFPA 1901 as recalled)",
                "NFPA 1901, minimum continuous load at idle at 93 °C under the hood",
                DutyCriterion.Obtained.RECALLED),
        /** The maximum load, a medical load of 20 A included, at not more than the maker's high idle. */
        AMBULANCE(
                93,
                20,
                "Idle balance test (KKK-A-1822E)",
                "Federal specification KKK-A-1822E, page 33: no battery discharge at 93 °C (200 °F) under the hood",
                DutyCriterion.Obtained.READ);

        private final double underHoodC;
        private final double addedA;
        private final String test;
        private final String source;
        private final DutyCriterion.Obtained obtained;

        Rule(double underHoodC, double addedA, String test, String source, DutyCriterion.Obtained obtained) {
            this.underHoodC = underHoodC;
            this.addedA = addedA;
            this.test = test;
            this.source = source;
            this.obtained = obtained;
        }

        /** Temperature of the air under the hood (°C): 200 °F in both rules. */
        public double underHoodC() {
            return underHoodC;
        }

        /** Load that it asks for whether or not a circuit has it (A). */
        public double addedA() {
            return addedA;
        }
    }

    /** The load of these circuits, and what the rule adds. */
    public IdleBalanceTest(Vehicle installed, Rule rule, Set<String> circuits, double idleRpm) {
        this(installed, rule, circuits, idleRpm, rule.addedA());
    }

    /** Refuses a speed out of range, circuits that are not there, and a vehicle without an alternator. */
    public IdleBalanceTest {
        Objects.requireNonNull(rule, "rule");
        circuits = Set.copyOf(circuits);
        LoadsUnderTest.in(installed, circuits);
        Require.inside("idleRpm", idleRpm, 300, 3000, "/min");
        Require.inside("addedA", addedA, 0, 100, "A");
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
        if (addedA == 0) {
            return LoadsUnderTest.in(installed, circuits);
        }
        Load added = new Load(ADDED, addedA, 12.8, 0, 0, DropOut.never(), new LoadPattern.Continuous(), Set.of());
        return LoadsUnderTest.in(installed, circuits, new Circuit(ADDED, 0, List.of(added)));
    }

    @Override
    public Scene scene() {
        return new Scene(
                name(), new InitialState(1, START_C), List.of(idling("settling", SETTLING_S), idling(BALANCE, TEST_S)));
    }

    private Phase idling(String phase, double durationS) {
        return DutyPhase.of(phase, EngineMode.IDLING, durationS, rule.underHoodC, idleRpm)
                .underHood(AirTemperature.constant(rule.underHoodC));
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
