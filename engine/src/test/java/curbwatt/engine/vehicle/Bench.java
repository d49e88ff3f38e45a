package curbwatt.engine.vehicle;

import curbwatt.engine.alternator.Alternator;
import curbwatt.engine.alternator.HotFactor;
import curbwatt.engine.alternator.MeasuredOutputCurve;
import curbwatt.engine.alternator.VoltageRegulator;
import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.BatteryCondition;
import curbwatt.engine.battery.Chemistry;
import curbwatt.engine.battery.label.BatteryLabel;
import curbwatt.engine.battery.label.LabelFit;
import curbwatt.engine.control.LowVoltageCutoff;
import curbwatt.engine.powertrain.CrankingLimit;
import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.powertrain.EngineSpeed;
import curbwatt.engine.powertrain.Starter;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.scene.InitialState;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.simulation.record.Recorder;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A vehicle on the test bench: one battery and what hangs on it, at one temperature, so that a figure can be worked out
 * beside it.
 *
 * @param battery its model
 * @param start state of charge and temperature; the air has the same
 * @param alternator if there is one
 * @param circuits feeds with their loads
 * @param cutoffs monitors
 * @param starting what a start takes
 */
public record Bench(
        Battery battery,
        InitialState start,
        Optional<Alternator> alternator,
        List<Circuit> circuits,
        List<LowVoltageCutoff> cutoffs,
        StartingSystem starting) {
    /** What a start on the bench draws. */
    public static final Starter STARTER = new Starter(0, 0, 150, 1, 1);

    /** The usual flooded battery of these tests: 70 Ah, 120 min, 650 A, without self-discharge. */
    public static final Battery SEVENTY = battery(Chemistry.FLOODED, 70, 120, 650);

    private static final double USUAL_C = 25;

    /** A new battery of a label, without self-discharge, so that a closed form can stand beside it. */
    public static Battery battery(Chemistry chemistry, double c20Ah, double reserveMin, double coldCrankingA) {
        return new Battery(
                LabelFit.of(BatteryLabel.of(chemistry, c20Ah, reserveMin, coldCrankingA))
                        .parameters(),
                new BatteryCondition(1, 1, 0));
    }

    /** A full battery at 25 °C with nothing on it, and a starter that asks for little. */
    public static Bench of(Battery battery) {
        return new Bench(
                battery,
                new InitialState(1, USUAL_C),
                Optional.empty(),
                List.of(),
                List.of(),
                new StartingSystem(STARTER, CrankingLimit.published(), false));
    }

    /** The usual battery, full at 25 °C. */
    public static Bench usual() {
        return of(SEVENTY);
    }

    /** An alternator of one current at every speed from 500 /min up, hot or cold, and a flat set-point. */
    public static Alternator alternator(double outputA, double setPointV, double rampS) {
        return new Alternator(
                new MeasuredOutputCurve(List.of(
                        new MeasuredOutputCurve.Point(500, outputA), new MeasuredOutputCurve.Point(20000, outputA))),
                new HotFactor(1, 1),
                new VoltageRegulator(setPointV, 0, 12, 16),
                2,
                rampS);
    }

    /** The same at another state. */
    public Bench from(double stateOfChargeFraction, double batteryC) {
        return new Bench(
                battery, new InitialState(stateOfChargeFraction, batteryC), alternator, circuits, cutoffs, starting);
    }

    /** The same with an alternator. */
    public Bench with(Alternator machine) {
        return new Bench(battery, start, Optional.of(machine), circuits, cutoffs, starting);
    }

    /** The same with one more circuit. */
    public Bench with(Circuit circuit) {
        return new Bench(battery, start, alternator, both(circuits, circuit), cutoffs, starting);
    }

    /** The same with one more cutoff. */
    public Bench with(LowVoltageCutoff cutoff) {
        return new Bench(battery, start, alternator, circuits, both(cutoffs, cutoff), starting);
    }

    /** The same with another starter. */
    public Bench with(StartingSystem other) {
        return new Bench(battery, start, alternator, circuits, cutoffs, other);
    }

    private static <T> List<T> both(List<T> before, T last) {
        return Stream.concat(before.stream(), Stream.of(last)).toList();
    }

    /** The vehicle. */
    public Vehicle vehicle() {
        return new Vehicle(
                "bench", new BatteryInstallation("battery", battery, 3600), alternator, circuits, cutoffs, starting);
    }

    /** A phase with the engine off. */
    public Phase off(String name, double durationS, String... stages) {
        return new Phase(name, EngineMode.OFF, durationS, start.batteryC(), EngineSpeed.constant(0), Set.of(stages));
    }

    /** A phase with the engine idling at 700 /min. */
    public Phase idling(String name, double durationS, String... stages) {
        return new Phase(
                name, EngineMode.IDLING, durationS, start.batteryC(), EngineSpeed.constant(700), Set.of(stages));
    }

    /** Runs phases. */
    public RunResult run(Phase... phases) {
        return run(Recorder.none(), phases);
    }

    /** Runs phases with a recorder. */
    public RunResult run(Recorder recorder, Phase... phases) {
        return Simulation.of(vehicle(), scene(phases)).run(recorder);
    }

    /** The scene of some phases. */
    public Scene scene(Phase... phases) {
        return new Scene("bench run", start, List.of(phases));
    }
}
