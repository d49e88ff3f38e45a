package curbwatt.engine.bench;

import curbwatt.engine.alternator.Alternator;
import curbwatt.engine.alternator.AlternatorLabel;
import curbwatt.engine.alternator.HotFactor;
import curbwatt.engine.alternator.ReactanceOutputCurve;
import curbwatt.engine.alternator.VoltageRegulator;
import curbwatt.engine.control.Cutoffs;
import curbwatt.engine.control.RecloseRule;
import curbwatt.engine.days.RosterStudy;
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

/** A truck on duty for a year: four shifts with two watches each, two days parked, and over again. */
final class DutyYear {

    static final int DAYS = 365;

    private static final AirTemperature AIR = AirTemperature.constant(12);

    private DutyYear() {}

    static RosterStudy study() {
        DayPlan shift = DayPlan.parkedToItsEnd(
                "shift",
                List.of(
                        phase("out", EngineMode.DRIVING, 1500, "drive"),
                        phase("first watch", EngineMode.OFF, 3600, "warn"),
                        phase("between", EngineMode.DRIVING, 1500, "drive"),
                        phase("second watch", EngineMode.OFF, 2700, "warn"),
                        phase("back", EngineMode.DRIVING, 1500, "drive")),
                "night",
                AIR,
                Set.of());
        DayPlan parked = DayPlan.parkedToItsEnd("parked", List.of(), "parked", AIR, Set.of());
        Roster roster =
                new Roster("year", new InitialState(1, 12), List.of(shift, shift, shift, shift, parked, parked), DAYS);
        return new RosterStudy(truck(), roster);
    }

    private static Vehicle truck() {
        return new Vehicle(
                "truck",
                new BatteryInstallation("battery", FlashingScene.battery(), FlashingScene.BATTERY_TIME_CONSTANT_S),
                Optional.of(new Alternator(
                        ReactanceOutputCurve.through(AlternatorLabel.of(50, 120)),
                        HotFactor.published(),
                        VoltageRegulator.usual(14.2),
                        2.6,
                        5)),
                List.of(
                        new Circuit(
                                "warning",
                                0.01,
                                List.of(
                                        Loads.patterned("heads", 12, Loads.flashing("beat", 1000, 0, 0, 400), "warn"),
                                        Loads.load("radio", 8, -1, new LoadPattern.Duty(4, 60, 0, 0.6), "warn"))),
                        new Circuit(
                                "truck",
                                0,
                                List.of(Loads.current("ignition", 9, "drive"), Loads.current("key-off draw", 0.04)))),
                List.of(Cutoffs.of("cutoff", 5, 11.6, 60, new RecloseRule.EngineRunning(), "warning")),
                new StartingSystem(new Starter(600, 0.2, 180, 1.5, 2), CrankingLimit.published(), false));
    }

    private static Phase phase(String name, EngineMode mode, double durationS, String stage) {
        return new Phase(name, mode, durationS, AIR, EngineSpeed.constant(1800), Set.of(stage));
    }
}
