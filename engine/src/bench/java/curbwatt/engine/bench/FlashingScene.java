package curbwatt.engine.bench;

import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.Chemistry;
import curbwatt.engine.battery.label.BatteryLabel;
import curbwatt.engine.battery.label.LabelFit;
import curbwatt.engine.control.Cutoffs;
import curbwatt.engine.control.LowVoltageCutoff;
import curbwatt.engine.control.RecloseRule;
import curbwatt.engine.load.Load;
import curbwatt.engine.load.LoadPattern;
import curbwatt.engine.load.Loads;
import curbwatt.engine.powertrain.CrankingLimit;
import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.powertrain.EngineSpeed;
import curbwatt.engine.powertrain.Starter;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.scene.InitialState;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.simulation.Fidelity;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.simulation.StepControl;
import curbwatt.engine.simulation.record.Recorder;
import curbwatt.engine.vehicle.BatteryInstallation;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.vehicle.StartingSystem;
import curbwatt.engine.vehicle.Vehicle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * A truck that watches a lane with its engine off: loads behind two feeds, about a third of them flashing, and a cutoff. The
 * air is colder than the battery, which cools all along.
 *
 * @param loads number of loads, 1 … 200; together they draw the same whatever their number
 * @param flashHz how often the slower of the two clocks comes round (1/s); the other is a quarter quicker
 * @param durationH length of the watch (h)
 */
public record FlashingScene(int loads, double flashHz, double durationH) {

    /** Air (°C); the battery begins at {@link #BATTERY_C}. */
    static final double AIR_C = 5;

    static final double BATTERY_C = 15;
    static final double BATTERY_TIME_CONSTANT_S = 18000;
    static final double TRIP_V = 11.7;
    static final double TRIP_DELAY_S = 60;
    static final double FILTER_S = 5;
    static final double WARNING_FEED_OHM = 0.02;

    private static final double FLASHING_A = 8;
    private static final double STEADY_A = 4.2;
    static final double KEY_OFF_A = 0.05;
    private static final double FLASHING_SHARE = 0.3;

    /** Eight hours, twenty loads, six of them flashing at 75 and 94 flashes a minute. */
    public static FlashingScene standard() {
        return new FlashingScene(20, 1.25, 8);
    }

    /** The scene, ready to run. */
    public Simulation simulation() {
        LowVoltageCutoff cutoff =
                Cutoffs.of("cutoff", FILTER_S, TRIP_V, TRIP_DELAY_S, new RecloseRule.EngineRunning(), "warning", "cab");
        Vehicle truck = new Vehicle(
                "truck",
                new BatteryInstallation("battery", battery(), BATTERY_TIME_CONSTANT_S),
                Optional.empty(),
                List.of(
                        new Circuit("warning", WARNING_FEED_OHM, flashing()),
                        new Circuit("cab", 0, steady()),
                        new Circuit("truck", 0, List.of(Loads.current("key-off draw", KEY_OFF_A)))),
                List.of(cutoff),
                new StartingSystem(new Starter(0, 0, 220, 1.5, 2), CrankingLimit.published(), false));
        Scene watch = new Scene(
                "Lane watch",
                new InitialState(1, BATTERY_C),
                List.of(new Phase(
                        "Watch", EngineMode.OFF, durationH * 3600, AIR_C, EngineSpeed.constant(0), Set.of())));
        return Simulation.of(truck, watch);
    }

    /** Runs it without a trace. */
    public RunResult run(Fidelity fidelity) {
        return simulation().run(Recorder.none(), StepControl.usual(), fidelity);
    }

    /** The usual steps, but for the change of voltage in one (V). */
    static StepControl control(double voltageChangeV) {
        StepControl usual = StepControl.usual();
        return new StepControl(voltageChangeV, usual.chargeFraction(), usual.longestS());
    }

    static Battery battery() {
        return Battery.asNew(
                LabelFit.of(BatteryLabel.of(Chemistry.AGM, 92, 160, 850)).parameters());
    }

    /** The flashing loads: constant current, power and resistance in turn, on two clocks, half of each against the rest. */
    List<Load> flashing() {
        int number = (int) Math.ceil(FLASHING_SHARE * loads);
        return IntStream.range(0, number)
                .mapToObj(i -> Loads.load("head " + i, FLASHING_A / number, exponent(i), pattern(i)))
                .toList();
    }

    /** The loads that burn all the time, but for the key-off draw. */
    List<Load> steady() {
        int number = Math.max(0, loads - flashing().size() - 1);
        List<Load> steady = new ArrayList<>();
        for (int i = 0; i < number; i++) {
            steady.add(Loads.load("lamp " + i, STEADY_A / number, exponent(i), new LoadPattern.Continuous()));
        }
        return List.copyOf(steady);
    }

    private static double exponent(int place) {
        return place % 3 - 1.0;
    }

    /** Two flashes a cycle on the slower clock, one on the quicker. */
    private LoadPattern pattern(int place) {
        boolean quick = place % 3 == 2;
        double periodMs = quick ? Math.rint(800 / flashHz) : Math.rint(1000 / flashHz);
        double phaseMs = place % 2 == 0 ? 0 : Math.rint(periodMs / 2);
        return quick
                ? Loads.flashing("quick", periodMs, phaseMs, 0, Math.rint(0.4 * periodMs))
                : Loads.flashing(
                        "slow",
                        periodMs,
                        phaseMs,
                        0,
                        Math.rint(0.15 * periodMs),
                        Math.rint(0.25 * periodMs),
                        Math.rint(0.4 * periodMs));
    }
}
