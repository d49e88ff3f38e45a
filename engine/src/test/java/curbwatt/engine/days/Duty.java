package curbwatt.engine.days;

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
import curbwatt.engine.scene.AirTemperature;
import curbwatt.engine.scene.DayPlan;
import curbwatt.engine.scene.InitialState;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.scene.Roster;
import curbwatt.engine.vehicle.BatteryInstallation;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.vehicle.StartingSystem;
import curbwatt.engine.vehicle.Vehicle;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** An incident truck and its shifts, for tests. */
final class Duty {

    private static final AirTemperature AIR = AirTemperature.constant(15);

    private Duty() {}

    /** A truck with flashing heads, a siren and a radio, and 0.04 A at all times. */
    static Vehicle truck() {
        Load heads = Loads.patterned("heads", 12, Loads.flashing("beat", 1000, 0, 0, 400), "warn");
        Load siren = Loads.load("siren", 9, -1, new LoadPattern.Duty(20, 120, 0, 0), "drive");
        Load radio = Loads.load("radio", 8, -1, new LoadPattern.RandomDuty(4, 60, 0.6, 7), "warn", "drive");
        Load ignition = Loads.current("ignition", 9, "drive");
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
                List.of(
                        new Circuit("warning", 0.01, List.of(heads, siren, radio)),
                        new Circuit("truck", 0, List.of(ignition, keyOff))),
                List.of(Cutoffs.of("cutoff", 5, 11.6, 60, new RecloseRule.EngineRunning(), "warning")),
                new StartingSystem(new Starter(600, 0.2, 180, 1.5, 2), CrankingLimit.published(), false));
    }

    /** Two lane watches with the engine off, and drives of some minutes between. */
    static DayPlan shift(double driveS, double watchS) {
        return DayPlan.parkedToItsEnd(
                "shift",
                List.of(
                        phase("out", EngineMode.DRIVING, driveS, "drive"),
                        phase("first watch", EngineMode.OFF, watchS, "warn"),
                        phase("between", EngineMode.DRIVING, driveS, "drive"),
                        phase("second watch", EngineMode.OFF, watchS, "warn"),
                        phase("back", EngineMode.DRIVING, driveS, "drive")),
                "night",
                AIR,
                Set.of());
    }

    static DayPlan parked() {
        return DayPlan.parkedToItsEnd("parked", List.of(), "parked", AIR, Set.of());
    }

    static Roster roster(int days, DayPlan... pattern) {
        return roster(days, 15, pattern);
    }

    static Roster roster(int days, double batteryC, DayPlan... pattern) {
        return new Roster("roster", new InitialState(1, batteryC), List.of(pattern), days);
    }

    /** The truck with nothing on it: its battery alone. */
    static Vehicle stripped() {
        Vehicle truck = truck();
        return new Vehicle("stripped", truck.battery(), truck.alternator(), List.of(), List.of(), truck.starting());
    }

    private static Phase phase(String name, EngineMode mode, double durationS, String stage) {
        return new Phase(name, mode, durationS, AIR, EngineSpeed.constant(1800), Set.of(stage));
    }
}
