package curbwatt.engine.study;

import curbwatt.engine.alternator.Alternator;
import curbwatt.engine.alternator.AlternatorLabel;
import curbwatt.engine.alternator.HotFactor;
import curbwatt.engine.alternator.ReactanceOutputCurve;
import curbwatt.engine.alternator.VoltageRegulator;
import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.BatteryCondition;
import curbwatt.engine.battery.BatteryParameters;
import curbwatt.engine.battery.Chemistry;
import curbwatt.engine.battery.label.BatteryLabel;
import curbwatt.engine.battery.label.LabelFit;
import curbwatt.engine.battery.label.LfpFit;
import curbwatt.engine.battery.label.LfpLabel;
import curbwatt.engine.control.LowVoltageCutoff;
import curbwatt.engine.control.RecloseRule;
import curbwatt.engine.control.SensePoint;
import curbwatt.engine.link.BatteryLink;
import curbwatt.engine.load.Load;
import curbwatt.engine.load.LoadPattern;
import curbwatt.engine.load.Loads;
import curbwatt.engine.powertrain.CrankingLimit;
import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.powertrain.EngineSpeed;
import curbwatt.engine.powertrain.Starter;
import curbwatt.engine.protection.PackProtection;
import curbwatt.engine.scene.InitialState;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.vehicle.AuxiliaryBattery;
import curbwatt.engine.vehicle.BatteryInstallation;
import curbwatt.engine.vehicle.BusNode;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.vehicle.StartingSystem;
import curbwatt.engine.vehicle.Vehicle;
import curbwatt.engine.verdict.Requirement;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.DoubleFunction;

/**
 * Vehicles that no study was made on, for searches by brute force beside it: each is built anew for every change, so that
 * what varies it in a study has no part in it. Steady loads and a coarse duty: a run takes a millisecond.
 *
 * @param name what is special about it
 * @param battery its starter battery as new
 * @param second its auxiliary battery, if it has one
 * @param airC air and batteries (°C)
 * @param loads the equipment, its currents multiplied by a factor
 * @param holdS how long of the watch the equipment is to be held (s)
 * @param reclose what closes its cutoff
 */
public record HeldBackTruck(
        String name,
        BatteryParameters battery,
        Optional<Second> second,
        double airC,
        DoubleFunction<List<Load>> loads,
        double holdS,
        RecloseRule reclose) {

    /** Name of its cutoff. */
    public static final String CUTOFF = "cutoff";

    private static final double DRIVE_S = 600;
    private static final double WATCH_S = 4 * 3600.0;

    /** An auxiliary battery as new, and what joins it to the other. */
    public record Second(BatteryParameters battery, BatteryLink link) {}

    /**
     * How a vehicle is built.
     *
     * @param tripV trip level (V)
     * @param tripDelayS delay (s)
     * @param sensorV what the cutoff reads too much (V)
     * @param battery the starter battery
     * @param second the auxiliary battery
     * @param warmerK by how much air and batteries are warmer (K)
     * @param loadFactor what the loads are multiplied by
     */
    public record Build(
            double tripV,
            double tripDelayS,
            double sensorV,
            Battery battery,
            Optional<Battery> second,
            double warmerK,
            double loadFactor) {}

    /** All of them. */
    public static List<HeldBackTruck> all() {
        return List.of(
                new HeldBackTruck(
                        "a small flooded battery in the cold",
                        lead(Chemistry.FLOODED, 70, 120, 650),
                        Optional.empty(),
                        -2,
                        factor -> List.of(Loads.current("heads", 13 * factor, "warn")),
                        3600,
                        new RecloseRule.ByHand()),
                new HeldBackTruck(
                        "a winch in the heat",
                        lead(Chemistry.AGM, 92, 160, 850),
                        Optional.empty(),
                        34,
                        factor -> List.of(
                                Loads.power("heads", 150 * factor, "warn"),
                                Loads.patterned("winch", 45 * factor, new LoadPattern.Duty(30, 600, 60, 0), "warn")),
                        5400,
                        new RecloseRule.EngineRunning()),
                new HeldBackTruck(
                        "a second battery behind a relay, in frost",
                        lead(Chemistry.AGM, 80, 140, 800),
                        Optional.of(new Second(
                                lead(Chemistry.AGM, 75, 130, 500),
                                new BatteryLink.ChargeRelay(13.3, 20, 12.8, 20, 0.003))),
                        -8,
                        factor -> List.of(Loads.resistor("floods", 1.0 / factor, "warn")),
                        3600,
                        new RecloseRule.AboveVoltage(13.2, 30)),
                new HeldBackTruck(
                        "an iron-phosphate pack behind a charger",
                        lead(Chemistry.FLOODED, 70, 120, 650),
                        Optional.of(new Second(
                                LfpFit.of(LfpLabel.ofTwentyHours(100, 0.015)),
                                new BatteryLink.DcDcCharger(30, 14.4, 0.9, 13.2, 5, 12.6, 5))),
                        18,
                        factor -> List.of(Loads.power("pump", 330 * factor, "warn")),
                        7200,
                        new RecloseRule.EngineRunning()),
                new HeldBackTruck(
                        "a large battery under a heavy load",
                        lead(Chemistry.AGM, 105, 190, 950),
                        Optional.empty(),
                        10,
                        factor -> List.of(
                                Loads.current("heads", 24 * factor, "warn"),
                                Loads.resistor("heater", 1.1 / factor, "warn")),
                        5400,
                        new RecloseRule.AboveVoltage(13, 10)));
    }

    /** The same vehicle in other air (°C). */
    public HeldBackTruck in(double otherC) {
        return new HeldBackTruck(name, battery, second, otherC, loads, holdS, reclose);
    }

    private static BatteryParameters lead(Chemistry chemistry, double c20Ah, double reserveMin, double coldCrankingA) {
        return LabelFit.of(BatteryLabel.of(chemistry, c20Ah, reserveMin, coldCrankingA))
                .parameters();
    }

    /** The same kind of battery, so many times the size: charges grow with it, resistance falls with it. */
    public static BatteryParameters sized(BatteryParameters one, double factor) {
        return new BatteryParameters(
                one.chemistry(),
                factor * one.ratedC20Ah(),
                factor * one.capacityAh(),
                factor * one.totalChargeAh(),
                one.peukertExponent(),
                one.modes(),
                one.resistanceOhm() / factor);
    }

    /** A battery with so much of its capacity left and its resistance grown so far. */
    public static Battery aged(BatteryParameters battery, double healthFraction, double growthFactor) {
        return new Battery(battery, new BatteryCondition(healthFraction, growthFactor, 0));
    }

    /** As it stands, at a setting. */
    public Build at(double tripV, double tripDelayS) {
        return new Build(tripV, tripDelayS, 0, aged(battery, 1, 1), second.map(one -> aged(one.battery(), 1, 1)), 0, 1);
    }

    /** The question that a build is asked: to hold, and to start after the watch. */
    public Question question(Build build) {
        Scene scene = new Scene(
                name,
                new InitialState(0.95, airC + build.warmerK()),
                List.of(
                        phase("Drive", EngineMode.DRIVING, DRIVE_S, 1900, build, Set.of()),
                        phase("Watch", EngineMode.OFF, WATCH_S, 0, build, Set.of("warn"))));
        return new Question(
                Simulation.of(vehicle(build), scene),
                List.of(
                        new Requirement.HoldCircuits(Set.of("equipment"), DRIVE_S + holdS),
                        new Requirement.WillStart(0.4)));
    }

    private Phase phase(
            String phase, EngineMode mode, double durationS, double engineRpm, Build build, Set<String> stages) {
        return new Phase(phase, mode, durationS, airC + build.warmerK(), EngineSpeed.constant(engineRpm), stages);
    }

    private Vehicle vehicle(Build build) {
        return new Vehicle(
                name,
                new BatteryInstallation("battery", build.battery(), 18000),
                build.second().map(this::auxiliary),
                Optional.of(new Alternator(
                        ReactanceOutputCurve.through(AlternatorLabel.of(50, 120)),
                        HotFactor.published(),
                        VoltageRegulator.usual(14.2),
                        2.6,
                        5)),
                List.of(
                        new Circuit(
                                "equipment",
                                second.isPresent() ? BusNode.EQUIPMENT : BusNode.STARTER,
                                0.005,
                                loads.apply(build.loadFactor())),
                        new Circuit("chassis", 0, List.of(Loads.current("key-off draw", 0.05 * build.loadFactor())))),
                List.of(new LowVoltageCutoff(
                        CUTOFF,
                        second.isPresent() ? new SensePoint.EquipmentNode() : new SensePoint.Node(),
                        1,
                        build.sensorV(),
                        OptionalDouble.empty(),
                        build.tripV(),
                        build.tripDelayS(),
                        reclose,
                        OptionalDouble.empty(),
                        Set.of("equipment"))),
                new StartingSystem(new Starter(0, 0, 200, 1.5, 2), CrankingLimit.published(), false));
    }

    private AuxiliaryBattery auxiliary(Battery pack) {
        double ratedAh = pack.parameters().ratedC20Ah();
        return new AuxiliaryBattery(
                new BatteryInstallation("second battery", pack, 18000),
                0.95,
                pack.parameters().chemistry() == Chemistry.LFP
                        ? Optional.of(PackProtection.usual(ratedAh, ratedAh))
                        : Optional.empty(),
                "link",
                second.orElseThrow().link());
    }
}
