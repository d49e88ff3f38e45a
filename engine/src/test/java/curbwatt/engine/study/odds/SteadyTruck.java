package curbwatt.engine.study.odds;

import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.Chemistry;
import curbwatt.engine.battery.label.BatteryLabel;
import curbwatt.engine.battery.label.LabelFit;
import curbwatt.engine.control.Cutoffs;
import curbwatt.engine.control.LowVoltageCutoff;
import curbwatt.engine.control.RecloseRule;
import curbwatt.engine.load.Loads;
import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.powertrain.EngineSpeed;
import curbwatt.engine.scene.InitialState;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.study.Question;
import curbwatt.engine.study.StudyTruck;
import curbwatt.engine.vehicle.BatteryInstallation;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.vehicle.Vehicle;
import curbwatt.engine.verdict.Requirement;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/** The truck of the other studies with lights that don't flash, so that a run takes a moment. */
final class SteadyTruck {

    /** Length of the drive before the stay (s). */
    static final double DRIVE_S = 600;

    private static final double STAY_S = 3600;

    private SteadyTruck() {}

    /** A stay of an hour that a cutoff sometimes ends. */
    static Question question() {
        return question(cutoff(12.05), 20, 0.85);
    }

    /** A stay with hardly anything on, and a cutoff that opens although the battery is nearly full. */
    static Question nervous() {
        return question(cutoff(12.7), 5, 0.95);
    }

    /** A stay that would end with a flat battery without the cutoff. */
    static Question guarding() {
        return question(cutoff(11.9), 45, 0.7);
    }

    /** A night that, without the cutoff, would exhaust the battery in half an hour and let it recover until the morning. */
    static Question night() {
        Question small = question(cutoff(11.3), 200, 1, 6 * STAY_S);
        Simulation simulation = small.simulation();
        BatteryInstallation large = StudyTruck.question().simulation().vehicle().battery();
        return new Question(
                simulation.with(simulation.vehicle().withBattery(large)),
                List.of(small.requirements().get(0)));
    }

    /** The same with a cutoff that knows the time alone. */
    static Question withTimer() {
        LowVoltageCutoff cutoff = cutoff(6);
        return question(
                new LowVoltageCutoff(
                        cutoff.name(),
                        cutoff.sense(),
                        0,
                        0,
                        OptionalDouble.empty(),
                        6,
                        60,
                        new RecloseRule.ByHand(),
                        OptionalDouble.of(3600),
                        cutoff.circuits()),
                5,
                0.95);
    }

    private static LowVoltageCutoff cutoff(double tripV) {
        return Cutoffs.of("cutoff", 0, tripV, 60, new RecloseRule.ByHand(), "warning");
    }

    private static Question question(LowVoltageCutoff cutoff, double currentA, double chargeFraction) {
        return question(cutoff, currentA, chargeFraction, STAY_S);
    }

    private static Question question(LowVoltageCutoff cutoff, double currentA, double chargeFraction, double stayS) {
        Vehicle vehicle = StudyTruck.question()
                .simulation()
                .vehicle()
                .withCircuits(List.of(new Circuit("warning", 0.01, List.of(Loads.current("heads", currentA, "warn")))))
                .withCutoffs(List.of(cutoff));
        vehicle = vehicle.withBattery(vehicle.battery()
                .with(Battery.asNew(LabelFit.of(BatteryLabel.of(Chemistry.AGM, 60, 100, 600))
                        .parameters())));
        Scene scene = new Scene(
                "Stay",
                new InitialState(chargeFraction, 15),
                List.of(
                        new Phase("Drive", EngineMode.DRIVING, DRIVE_S, 15, EngineSpeed.constant(1800), Set.of()),
                        new Phase("Stay", EngineMode.OFF, stayS, 15, EngineSpeed.constant(700), Set.of("warn"))));
        return new Question(
                Simulation.of(vehicle, scene),
                List.of(
                        new Requirement.HoldCircuits(Set.of("warning"), DRIVE_S + stayS),
                        new Requirement.WillStart(0.2)));
    }
}
