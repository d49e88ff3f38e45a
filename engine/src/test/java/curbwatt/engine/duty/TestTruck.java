package curbwatt.engine.duty;

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
import curbwatt.engine.load.Load;
import curbwatt.engine.load.LoadPattern;
import curbwatt.engine.powertrain.CrankingLimit;
import curbwatt.engine.powertrain.Starter;
import curbwatt.engine.vehicle.BatteryInstallation;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.vehicle.StartingSystem;
import curbwatt.engine.vehicle.Vehicle;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** A truck for the duty tests: a circuit under test of constant current, and one that the tests leave off. */
final class TestTruck {

    static final double RESERVE_MIN = 160;
    static final double PULLEY_RATIO = 2.6;

    private static final Battery BATTERY = Battery.asNew(
            LabelFit.of(BatteryLabel.of(Chemistry.AGM, 92, RESERVE_MIN, 850)).parameters());

    private TestTruck() {}

    static Vehicle drawing(double testedA, LowVoltageCutoff... cutoffs) {
        return new Vehicle(
                "truck",
                new BatteryInstallation("battery", BATTERY, 18000),
                Optional.of(new Alternator(
                        ReactanceOutputCurve.through(AlternatorLabel.of(50, 120)),
                        HotFactor.published(),
                        VoltageRegulator.usual(14.2),
                        PULLEY_RATIO,
                        5)),
                List.of(circuit("continuous", testedA), circuit("other", 500)),
                List.of(cutoffs),
                new StartingSystem(new Starter(0, 0, 150, 3, 2), CrankingLimit.published(), false));
    }

    static LowVoltageCutoff cutoff(double warningV, double tripV) {
        return new LowVoltageCutoff(
                "cutoff",
                new SensePoint.Node(),
                0,
                0,
                OptionalDouble.of(warningV),
                tripV,
                30,
                new RecloseRule.EngineRunning(),
                OptionalDouble.empty(),
                Set.of("continuous"));
    }

    private static Circuit circuit(String name, double currentA) {
        Load load = new Load(
                name + " load",
                currentA,
                12.8,
                0,
                0,
                DropOut.never(),
                new LoadPattern.Continuous(),
                Set.of(name + " stage"));
        return new Circuit(name, 0, List.of(load));
    }
}
