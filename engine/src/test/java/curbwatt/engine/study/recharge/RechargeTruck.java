package curbwatt.engine.study.recharge;

import curbwatt.engine.alternator.Alternator;
import curbwatt.engine.alternator.HotFactor;
import curbwatt.engine.alternator.MeasuredOutputCurve;
import curbwatt.engine.alternator.VoltageRegulator;
import curbwatt.engine.load.Loads;
import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.powertrain.EngineSpeed;
import curbwatt.engine.scene.InitialState;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.study.Question;
import curbwatt.engine.study.StudyTruck;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.vehicle.Vehicle;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** A truck with steady loads and an alternator whose output rises straight with speed, for tests of recharging. */
final class RechargeTruck {

    private static final double PULLEY_RATIO = 2.5;

    private RechargeTruck() {}

    /** The truck after an hour's watch at 20 A with the engine off, which it began with so much charge. */
    static Question question(double startFraction, double engineLoadA, double idleA, double fastA) {
        Scene scene = new Scene(
                "Watch",
                new InitialState(startFraction, 25),
                List.of(
                        new Phase("Watch", EngineMode.OFF, 3600, 25, EngineSpeed.constant(0), Set.of("warn")),
                        new Phase("Home", EngineMode.DRIVING, 900, 25, EngineSpeed.constant(2000), Set.of("engine"))));
        return new Question(Simulation.of(truck(engineLoadA, idleA, fastA), scene), List.of());
    }

    /** Gives so much at 500 and at 2000 turns of the engine, straight between, hot or not. */
    static Vehicle truck(double engineLoadA, double idleA, double fastA) {
        Vehicle truck = StudyTruck.question().simulation().vehicle();
        return truck.withCutoffs(List.of())
                .withCircuits(List.of(
                        new Circuit("warning", 0, List.of(Loads.current("heads", 20, "warn"))),
                        new Circuit("truck", 0, List.of(Loads.current("engine electrics", engineLoadA, "engine")))))
                .withAlternator(Optional.of(new Alternator(
                        new MeasuredOutputCurve(List.of(
                                new MeasuredOutputCurve.Point(PULLEY_RATIO * 500, idleA),
                                new MeasuredOutputCurve.Point(PULLEY_RATIO * 2000, fastA))),
                        new HotFactor(1, 1),
                        VoltageRegulator.usual(14.4),
                        PULLEY_RATIO,
                        1)));
    }

    /** Wants so much charge, and has two speeds tried. */
    static RechargePlan plan(OptionalDouble wantedFraction, double betweenCallsS) {
        return new RechargePlan(
                wantedFraction,
                Optional.empty(),
                OptionalDouble.empty(),
                List.of(600.0, 1500.0),
                betweenCallsS,
                Optional.empty());
    }
}
