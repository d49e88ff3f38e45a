package curbwatt.charts.run;

import curbwatt.engine.alternator.Alternator;
import curbwatt.engine.alternator.AlternatorLabel;
import curbwatt.engine.alternator.HotFactor;
import curbwatt.engine.alternator.ReactanceOutputCurve;
import curbwatt.engine.alternator.VoltageRegulator;
import curbwatt.engine.battery.Battery;
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

/** Small scenarios of an incident truck, quick to run, for each kind of outcome. */
public final class SampleScenario {

    private static final String SCENE = "Scene lights";
    private static final String RADIOS = "Radios, desk";

    private SampleScenario() {}

    /** Drives, then stands with the engine off for half an hour; everything holds. */
    public static ReadyScenario holds() {
        return scenario("Half an hour off", 11.5, 0, 30, List.of(hold(30), new Requirement.WillStart(0.3)));
    }

    /** The trip level lies so high that the cutoff opens long before the battery is low. */
    public static ReadyScenario cutOffEarly() {
        return scenario("Cutoff too early", 12.3, 0, 60, List.of(hold(60), new Requirement.KeepCharge(0.5)));
    }

    /** Nothing disconnects, and nobody can start. */
    public static ReadyScenario strands() {
        return scenario(
                "Stranded", 9, 0, 190, List.of(new Requirement.WillStart(0.3), new Requirement.KeepCharge(0.5)));
    }

    /** A radio that wants more volts than it gets. */
    public static ReadyScenario dropsOut() {
        return scenario("Silent radio", 9, 12.35, 60, List.of(hold(60), new Requirement.KeepVoltage(RADIOS, 12.4)));
    }

    /** Asks nothing. */
    public static ReadyScenario asksNothing() {
        return scenario("Nothing asked", 11.5, 0, 30, List.of());
    }

    private static Requirement hold(double minutes) {
        return new Requirement.HoldCircuits(Set.of(SCENE, RADIOS), 60 * minutes);
    }

    private static ReadyScenario scenario(
            String title, double tripV, double radioDropOutV, double offMin, List<Requirement> requirements) {
        return new ReadyScenario(
                "sample.json",
                title,
                "A truck of the Saltmere Causeway Authority & its crew.",
                vehicle(tripV, radioDropOutV),
                List.of(),
                scene(title, offMin),
                Optional.empty(),
                requirements,
                StudyPlans.usual(),
                10,
                List.of("Reserve capacity is estimated from the 20 h capacity."),
                List.of());
    }

    private static Scene scene(String title, double offMin) {
        Set<String> stages = Set.of("scene");
        return new Scene(
                title,
                new InitialState(0.95, 20),
                List.of(
                        new Phase("Approach", EngineMode.DRIVING, 120, 20, EngineSpeed.constant(1800), Set.of()),
                        new Phase("Lane watch", EngineMode.OFF, 60 * offMin, 20, EngineSpeed.constant(0), stages)));
    }

    private static Vehicle vehicle(double tripV, double radioDropOutV) {
        FlashClock clock = new FlashClock("bar", 800);
        Load bar = load(
                "Amber bar",
                9,
                0,
                DropOut.never(),
                new LoadPattern.Flashing(clock, List.of(new OnInterval(0, 120), new OnInterval(200, 320)), 0));
        Load lights = load("Work lights", 14, -1, DropOut.never(), new LoadPattern.Continuous());
        Load radio = load(
                "Radio",
                2,
                -1,
                radioDropOutV > 0 ? DropOut.at(radioDropOutV) : DropOut.never(),
                new LoadPattern.Continuous());
        LowVoltageCutoff cutoff = new LowVoltageCutoff(
                "Scene power",
                new SensePoint.Node(),
                2,
                0,
                OptionalDouble.of(tripV + 0.2),
                tripV,
                30,
                new RecloseRule.EngineRunning(),
                OptionalDouble.empty(),
                Set.of(SCENE));
        Battery battery = Battery.asNew(
                LabelFit.of(BatteryLabel.of(Chemistry.AGM, 92, 160, 850)).parameters());
        return new Vehicle(
                "Incident truck 4",
                new BatteryInstallation("Starter battery", battery, 18000),
                Optional.of(new Alternator(
                        ReactanceOutputCurve.through(AlternatorLabel.of(60, 150)),
                        HotFactor.published(),
                        VoltageRegulator.usual(14.2),
                        2.8,
                        5)),
                List.of(new Circuit(SCENE, 0.01, List.of(bar, lights)), new Circuit(RADIOS, 0.03, List.of(radio))),
                List.of(cutoff),
                new StartingSystem(new Starter(0, 0, 250, 3, 2.5), CrankingLimit.published(), true));
    }

    private static Load load(String name, double ratedA, double exponent, DropOut dropOut, LoadPattern pattern) {
        return new Load(name, ratedA, 12.8, exponent, 0, dropOut, pattern, Set.of("scene"));
    }
}
