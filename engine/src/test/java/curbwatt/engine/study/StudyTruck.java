package curbwatt.engine.study;

import curbwatt.engine.alternator.Alternator;
import curbwatt.engine.alternator.AlternatorLabel;
import curbwatt.engine.alternator.HotFactor;
import curbwatt.engine.alternator.ReactanceOutputCurve;
import curbwatt.engine.alternator.VoltageRegulator;
import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.Chemistry;
import curbwatt.engine.battery.label.BatteryLabel;
import curbwatt.engine.battery.label.LabelFit;
import curbwatt.engine.control.Cutoffs;
import curbwatt.engine.control.RecloseRule;
import curbwatt.engine.load.Load;
import curbwatt.engine.load.LoadPattern;
import curbwatt.engine.load.Loads;
import curbwatt.engine.powertrain.CrankingLimit;
import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.powertrain.EngineSpeed;
import curbwatt.engine.powertrain.Starter;
import curbwatt.engine.scene.InitialState;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.vehicle.BatteryInstallation;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.vehicle.StartingSystem;
import curbwatt.engine.vehicle.Vehicle;
import curbwatt.engine.verdict.Requirement;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** An incident truck that watches a lane for six hours with the engine off, for tests of studies. */
public final class StudyTruck {

    /** Length of the watch (s). */
    public static final double WATCH_S = 6 * 3600.0;

    private StudyTruck() {}

    /** The truck in its scene, asked to hold for three hours and to start with 0.2 V to spare. */
    public static Question question() {
        return new Question(
                Simulation.of(truck(), scene()),
                List.of(new Requirement.HoldCircuits(Set.of("warning"), 3 * 3600.0), new Requirement.WillStart(0.2)));
    }

    private static Vehicle truck() {
        Load heads = Loads.patterned("heads", 26, Loads.flashing("beat", 1000, 0, 0, 400), "warn");
        Load radio = Loads.load("radio", 8, -1, new LoadPattern.Duty(4, 60, 0, 0.6), "warn");
        Load keyOff = Loads.current("key-off draw", 0.04);
        return new Vehicle(
                "truck",
                new BatteryInstallation(
                        "battery",
                        Battery.asNew(LabelFit.of(BatteryLabel.of(Chemistry.AGM, 92, 160, 850))
                                .parameters()),
                        18000),
                Optional.of(new Alternator(
                        ReactanceOutputCurve.through(AlternatorLabel.of(50, 120)),
                        HotFactor.published(),
                        VoltageRegulator.usual(14.2),
                        2.6,
                        5)),
                List.of(new Circuit("warning", 0.01, List.of(heads, radio)), new Circuit("truck", 0, List.of(keyOff))),
                List.of(Cutoffs.of("cutoff", 5, 11.9, 60, new RecloseRule.EngineRunning(), "warning")),
                new StartingSystem(new Starter(600, 0.2, 180, 1.5, 2), CrankingLimit.published(), false));
    }

    private static Scene scene() {
        return new Scene(
                "Lane watch",
                new InitialState(0.9, 15),
                List.of(
                        new Phase("Drive", EngineMode.DRIVING, 900, 15, EngineSpeed.constant(1800), Set.of()),
                        new Phase("Watch", EngineMode.OFF, WATCH_S, 15, EngineSpeed.constant(700), Set.of("warn"))));
    }
}
