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
import curbwatt.engine.link.BatteryLink;
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
import curbwatt.engine.vehicle.AuxiliaryBattery;
import curbwatt.engine.vehicle.BatteryInstallation;
import curbwatt.engine.vehicle.BusNode;
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

/** An incident truck whose equipment hangs on a battery of its own. */
final class TwoBatteryScenario {

    private static final String BAR = "Light bar";
    private static final String LIGHTS = "Scene lights";
    private static final String RADIOS = "Radios";
    private static final RecloseRule CHARGED = new RecloseRule.AboveVoltage(13.2, 10);

    private TwoBatteryScenario() {}

    /** A charge-sensing relay; two cutoffs, the first senses at the equipment node. */
    static ReadyScenario relay() {
        return scenario(
                "Two batteries, a relay between",
                new BatteryLink.ChargeRelay(13.3, 10, 12.8, 30, 0.004),
                List.of(
                        cutoff("Light cutoff", new SensePoint.EquipmentNode(), 11.8, CHARGED, Set.of(BAR, LIGHTS)),
                        cutoff("Radio cutoff", new SensePoint.EquipmentNode(), 11.2, CHARGED, Set.of(RADIOS))));
    }

    /** A charger too small for the load; the cutoff senses behind the feed of the lights. */
    static ReadyScenario charger() {
        return scenario(
                "Two batteries, a charger between",
                new BatteryLink.DcDcCharger(15, 14.4, 0.9, 13.2, 5, 12.6, 5),
                List.of(cutoff(
                        "Light cutoff",
                        new SensePoint.FeedEnd(LIGHTS),
                        11.8,
                        new RecloseRule.EngineRunning(),
                        Set.of(BAR, LIGHTS))));
    }

    private static ReadyScenario scenario(String title, BatteryLink link, List<LowVoltageCutoff> cutoffs) {
        return new ReadyScenario(
                "two.json",
                title,
                "",
                vehicle(link, cutoffs),
                List.of(),
                new Scene(
                        title,
                        new InitialState(0.9, 15),
                        List.of(
                                new Phase(
                                        "Drive out", EngineMode.DRIVING, 480, 15, EngineSpeed.constant(1800), Set.of()),
                                new Phase(
                                        "Lane watch",
                                        EngineMode.OFF,
                                        7200,
                                        15,
                                        EngineSpeed.constant(0),
                                        Set.of("scene")),
                                new Phase(
                                        "Clear the lane",
                                        EngineMode.IDLING,
                                        1200,
                                        15,
                                        EngineSpeed.constant(750),
                                        Set.of("scene")))),
                Optional.empty(),
                List.of(
                        new Requirement.HoldCircuits(Set.of(BAR, LIGHTS, RADIOS), 7200),
                        new Requirement.WillStart(0.3),
                        new Requirement.KeepCharge(0.6)),
                StudyPlans.usual(),
                10,
                List.of(),
                List.of());
    }

    private static LowVoltageCutoff cutoff(
            String name, SensePoint sense, double tripV, RecloseRule reclose, Set<String> circuits) {
        return new LowVoltageCutoff(
                name, sense, 1, 0, OptionalDouble.empty(), tripV, 30, reclose, OptionalDouble.empty(), circuits);
    }

    private static Vehicle vehicle(BatteryLink link, List<LowVoltageCutoff> cutoffs) {
        FlashClock clock = new FlashClock("bar", 800);
        LoadPattern flashing =
                new LoadPattern.Flashing(clock, List.of(new OnInterval(0, 120), new OnInterval(200, 320)), 0);
        LoadPattern steady = new LoadPattern.Continuous();
        return new Vehicle(
                "Incident truck 7",
                new BatteryInstallation("Engine battery", battery(Chemistry.FLOODED, 70, 120, 600), 18000),
                Optional.of(new AuxiliaryBattery(
                        new BatteryInstallation("Cabinet battery", battery(Chemistry.AGM, 92, 160, 850), 18000),
                        0.7,
                        "Battery link",
                        link)),
                Optional.of(new Alternator(
                        ReactanceOutputCurve.through(AlternatorLabel.of(70, 160)),
                        HotFactor.published(),
                        VoltageRegulator.usual(14.2),
                        2.8,
                        5)),
                List.of(
                        new Circuit("Chassis", 0, List.of(load("Engine and cab", 8, steady, Set.of()))),
                        new Circuit(BAR, BusNode.EQUIPMENT, 0.01, List.of(load("Bar", 18, flashing, Set.of("scene")))),
                        new Circuit(
                                LIGHTS, BusNode.EQUIPMENT, 0.012, List.of(load("Masts", 22, steady, Set.of("scene")))),
                        new Circuit(RADIOS, BusNode.EQUIPMENT, 0.02, List.of(load("Radio", 3, steady, Set.of())))),
                cutoffs,
                new StartingSystem(new Starter(0, 0, 250, 3, 2.5), CrankingLimit.published(), true));
    }

    private static Battery battery(Chemistry chemistry, double c20Ah, double reserveMin, double coldCrankingA) {
        return Battery.asNew(LabelFit.of(BatteryLabel.of(chemistry, c20Ah, reserveMin, coldCrankingA))
                .parameters());
    }

    private static Load load(String name, double ratedA, LoadPattern pattern, Set<String> stages) {
        return new Load(name, ratedA, 12.8, 0, 0, DropOut.never(), pattern, stages);
    }
}
