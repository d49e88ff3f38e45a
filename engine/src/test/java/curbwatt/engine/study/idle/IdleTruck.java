package curbwatt.engine.study.idle;

import curbwatt.engine.load.Loads;
import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.powertrain.EngineSpeed;
import curbwatt.engine.powertrain.FuelRate;
import curbwatt.engine.powertrain.PublishedIdle;
import curbwatt.engine.scene.InitialState;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.study.Question;
import curbwatt.engine.study.StudyTruck;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.vehicle.EngineEquipment;
import curbwatt.engine.vehicle.Vehicle;
import curbwatt.engine.verdict.Requirement;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A truck with steady loads that idles at a closure, for tests of the study on standing. */
final class IdleTruck {

    static final double STANDING_S = 4 * 3600.0;
    static final double DRIVE_S = 900;

    private IdleTruck() {}

    /** The truck at a closure at so much load; all of it to hold throughout, and the engine to start. */
    static Question question(double loadA) {
        return new Question(
                Simulation.of(truck(loadA), scene(EngineMode.IDLING)),
                List.of(
                        new Requirement.HoldCircuits(Set.of("warning"), DRIVE_S + STANDING_S),
                        new Requirement.WillStart(0.2)));
    }

    static Vehicle truck(double loadA) {
        Vehicle truck = StudyTruck.question().simulation().vehicle();
        return truck.withCircuits(List.of(
                        new Circuit("warning", 0.01, List.of(Loads.current("heads", loadA, "warn"))),
                        new Circuit("truck", 0, List.of(Loads.current("engine electrics", 6, "engine")))))
                .withEngine(new EngineEquipment(
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(new FuelRate(
                                PublishedIdle.MEDIUM_TRUCK_DIESEL.fuel(),
                                PublishedIdle.MEDIUM_TRUCK_DIESEL.burn(700),
                                FuelRate.EUROPEAN_BASELINE_FRACTION))));
    }

    static Scene scene(EngineMode standing) {
        return new Scene(
                "Closure",
                new InitialState(0.95, 15),
                List.of(
                        new Phase(
                                "Drive", EngineMode.DRIVING, DRIVE_S, 15, EngineSpeed.constant(1800), Set.of("engine")),
                        new Phase(
                                "Closure",
                                standing,
                                STANDING_S,
                                15,
                                EngineSpeed.constant(700),
                                Set.of("warn", "engine"))));
    }
}
