package curbwatt.engine.study.settings;

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
import curbwatt.engine.study.Question;
import curbwatt.engine.vehicle.BatteryInstallation;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.vehicle.StartingSystem;
import curbwatt.engine.vehicle.Vehicle;
import curbwatt.engine.verdict.Requirement;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A truck that pulls a wreck off the lane with a winch and then watches the lane until its cutoff opens; steady loads, so
 * that a run takes milliseconds.
 */
public final class SettingsTruck {

    /** Name of its cutoff. */
    public static final String CUTOFF = "cutoff";

    private static final double NIGHT_S = 2 * 3600.0;

    private SettingsTruck() {}

    /** Asked to hold for an hour, not to trip while winching, and to start after some hours with 0.3 V to spare. */
    public static Question question() {
        return asking(3600);
    }

    /** The same with another time to hold (s). */
    public static Question asking(double holdS) {
        return new Question(
                Simulation.of(truck(new RecloseRule.EngineRunning()), scene()),
                List.of(
                        new Requirement.HoldCircuits(Set.of("warning"), holdS),
                        new Requirement.NoTrip(Set.of("Winch")),
                        new Requirement.WillStart(0.3),
                        new Requirement.StartAfterParked("Night", NIGHT_S, 0.3)));
    }

    /** The truck with a cutoff that closes by a rule. */
    public static Vehicle truck(RecloseRule reclose) {
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
                List.of(
                        new Circuit("warning", 0.01, List.of(Loads.current("heads", 24, "warn"))),
                        new Circuit(
                                "winch",
                                0.002,
                                List.of(Loads.patterned("winch", 80, new LoadPattern.Duty(25, 90, 10, 0), "winch"))),
                        new Circuit("truck", 0, List.of(Loads.current("key-off draw", 0.05)))),
                List.of(Cutoffs.of(CUTOFF, 1, 11.6, 60, reclose, "warning", "winch")),
                new StartingSystem(new Starter(0, 0, 220, 1.5, 2), CrankingLimit.published(), false));
    }

    private static Scene scene() {
        return new Scene(
                "Winch and watch",
                new InitialState(0.95, 12),
                List.of(
                        new Phase("Winch", EngineMode.OFF, 360, 12, EngineSpeed.constant(0), Set.of("warn", "winch")),
                        new Phase("Watch", EngineMode.OFF, 2.5 * 3600, 10, EngineSpeed.constant(0), Set.of("warn")),
                        new Phase("Night", EngineMode.PARKED, NIGHT_S, 2, EngineSpeed.constant(0), Set.of())));
    }
}
