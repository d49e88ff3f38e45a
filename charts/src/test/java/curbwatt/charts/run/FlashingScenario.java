package curbwatt.charts.run;

import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.BatteryCondition;
import curbwatt.engine.battery.BatteryParameters;
import curbwatt.engine.battery.Chemistry;
import curbwatt.engine.battery.label.BatteryLabel;
import curbwatt.engine.battery.label.LabelFit;
import curbwatt.engine.control.LowVoltageCutoff;
import curbwatt.engine.control.RecloseRule;
import curbwatt.engine.control.SensePoint;
import curbwatt.engine.load.DropOut;
import curbwatt.engine.load.FlashClock;
import curbwatt.engine.load.Load;
import curbwatt.engine.load.LoadPattern;
import curbwatt.engine.load.OnInterval;
import curbwatt.engine.powertrain.CrankingLimit;
import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.powertrain.EngineSpeed;
import curbwatt.engine.powertrain.Starter;
import curbwatt.engine.scene.InitialState;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.vehicle.BatteryInstallation;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.vehicle.StartingSystem;
import curbwatt.engine.vehicle.Vehicle;
import curbwatt.engine.verdict.Requirement;
import curbwatt.scenarios.assemble.ReadyScenario;
import curbwatt.scenarios.assemble.StudyPlans;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Heads on one clock, as three programs have run them: 8 A steady and two heads of 8 A on a battery of 70 Ah. */
final class FlashingScenario {

    private FlashingScenario() {}

    /** One head after the other; asked to hold for longer than they do so. */
    static ReadyScenario inTurn() {
        return new ReadyScenario(
                "sample.json",
                "Two heads in turn",
                "",
                vehicle(),
                List.of(),
                new Scene(
                        "Lane watch",
                        new InitialState(1, 25),
                        List.of(new Phase("Watch", EngineMode.OFF, 7200, 25, EngineSpeed.constant(0), Set.of()))),
                Optional.empty(),
                List.of(new Requirement.HoldCircuits(Set.of("equipment"), 6000)),
                StudyPlans.usual(),
                10,
                List.of(),
                List.of());
    }

    private static Vehicle vehicle() {
        BatteryParameters fitted =
                LabelFit.of(BatteryLabel.of(Chemistry.FLOODED, 70, 120, 650)).parameters();
        return new Vehicle(
                "truck",
                new BatteryInstallation("battery", new Battery(fitted, new BatteryCondition(1, 1, 0)), 18000),
                Optional.empty(),
                List.of(new Circuit(
                        "equipment",
                        0,
                        List.of(load("computer", new LoadPattern.Continuous()), head("left", 0), head("right", 400)))),
                List.of(new LowVoltageCutoff(
                        "cutoff",
                        new SensePoint.Node(),
                        0,
                        0,
                        OptionalDouble.empty(),
                        11.8,
                        30,
                        new RecloseRule.ByHand(),
                        OptionalDouble.empty(),
                        Set.of("equipment"))),
                new StartingSystem(new Starter(0, 0, 150, 3, 2), CrankingLimit.published(), false));
    }

    private static Load head(String name, double phaseMs) {
        return load(
                name,
                new LoadPattern.Flashing(new FlashClock("flasher", 800), List.of(new OnInterval(0, 400)), phaseMs));
    }

    private static Load load(String name, LoadPattern pattern) {
        return new Load(name, 8, 12.8, 0, 0, DropOut.never(), pattern, Set.of());
    }
}
