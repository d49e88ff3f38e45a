package curbwatt.engine.simulation;

import curbwatt.engine.alternator.Alternator;
import curbwatt.engine.alternator.AlternatorLabel;
import curbwatt.engine.alternator.HotFactor;
import curbwatt.engine.alternator.ReactanceOutputCurve;
import curbwatt.engine.alternator.VoltageRegulator;
import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.BatteryCondition;
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
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** Parts and vehicles for tests of whole runs. */
final class Vehicles {

    static final BatteryCondition NEW_WITHOUT_SELF_DISCHARGE = new BatteryCondition(1, 1, 0);

    private Vehicles() {}

    static Battery flooded70() {
        return battery(Chemistry.FLOODED, 70, 120, 650);
    }

    static Battery agm92() {
        return battery(Chemistry.AGM, 92, 160, 850);
    }

    static Battery battery(Chemistry chemistry, double c20Ah, double reserveMin, double coldCrankingA) {
        return new Battery(
                LabelFit.of(BatteryLabel.of(chemistry, c20Ah, reserveMin, coldCrankingA))
                        .parameters(),
                NEW_WITHOUT_SELF_DISCHARGE);
    }

    static Load steady(String name, double ratedA, double exponent) {
        return load(name, ratedA, exponent, new LoadPattern.Continuous());
    }

    static Load flashing(String name, double ratedA, double exponent, double periodMs, double onMs, double phaseMs) {
        FlashClock clock = new FlashClock("clock " + periodMs, periodMs);
        return load(name, ratedA, exponent, new LoadPattern.Flashing(clock, List.of(new OnInterval(0, onMs)), phaseMs));
    }

    static Load load(String name, double ratedA, double exponent, LoadPattern pattern) {
        return new Load(name, ratedA, 12.8, exponent, 0, DropOut.never(), pattern, Set.of());
    }

    static LowVoltageCutoff cutoff(
            double tripV, double delayS, double filterS, RecloseRule reclose, String... circuits) {
        return new LowVoltageCutoff(
                "cutoff",
                new SensePoint.Node(),
                filterS,
                0,
                OptionalDouble.empty(),
                tripV,
                delayS,
                reclose,
                OptionalDouble.empty(),
                Set.of(circuits));
    }

    static Alternator alternator(double idleA, double ratedA, double pulleyRatio) {
        return new Alternator(
                ReactanceOutputCurve.through(AlternatorLabel.of(idleA, ratedA)),
                HotFactor.published(),
                VoltageRegulator.usual(14.2),
                pulleyRatio,
                5);
    }

    static StartingSystem starting() {
        return new StartingSystem(new Starter(0, 0, 150, 3, 2), CrankingLimit.published(), false);
    }

    static Vehicle vehicle(Battery battery, List<Circuit> circuits, LowVoltageCutoff... cutoffs) {
        return new Vehicle(
                "truck",
                new BatteryInstallation("battery", battery, 18000),
                Optional.empty(),
                circuits,
                List.of(cutoffs),
                starting());
    }

    static Phase off(double durationS, double airC) {
        return new Phase("engine off", EngineMode.OFF, durationS, airC, EngineSpeed.constant(0), Set.of());
    }

    static Phase idling(double durationS, double airC, double engineRpm) {
        return new Phase("idling", EngineMode.IDLING, durationS, airC, EngineSpeed.constant(engineRpm), Set.of());
    }

    static Phase driving(double durationS, double airC, double engineRpm) {
        return new Phase("driving", EngineMode.DRIVING, durationS, airC, EngineSpeed.constant(engineRpm), Set.of());
    }

    static Scene scene(double chargeFraction, double batteryC, Phase... phases) {
        return new Scene("scene", new InitialState(chargeFraction, batteryC), List.of(phases));
    }
}
