package curbwatt.charts.figure;

import curbwatt.charts.run.RunStory;
import curbwatt.engine.alternator.Alternator;
import curbwatt.engine.alternator.AlternatorLabel;
import curbwatt.engine.alternator.HotFactor;
import curbwatt.engine.alternator.ReactanceOutputCurve;
import curbwatt.engine.alternator.VoltageRegulator;
import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.BatteryParameters;
import curbwatt.engine.battery.Chemistry;
import curbwatt.engine.battery.DiffusionModes;
import curbwatt.engine.control.LowVoltageCutoff;
import curbwatt.engine.control.RecloseRule;
import curbwatt.engine.control.SensePoint;
import curbwatt.engine.event.Event;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.load.DropOut;
import curbwatt.engine.load.FlashClock;
import curbwatt.engine.load.Load;
import curbwatt.engine.load.LoadPattern;
import curbwatt.engine.load.OnInterval;
import curbwatt.engine.powertrain.CrankingLimit;
import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.powertrain.EngineSpeed;
import curbwatt.engine.powertrain.Starter;
import curbwatt.engine.result.ChargeLedger;
import curbwatt.engine.result.EnergyLedger;
import curbwatt.engine.result.EngineSummary;
import curbwatt.engine.result.PhaseSummary;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.result.SensedSample;
import curbwatt.engine.result.Trace;
import curbwatt.engine.result.TraceRow;
import curbwatt.engine.result.WaveformPoint;
import curbwatt.engine.scene.InitialState;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.vehicle.BatteryInstallation;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.vehicle.StartingSystem;
import curbwatt.engine.vehicle.Vehicle;
import curbwatt.engine.verdict.Requirement;
import curbwatt.engine.verdict.Verdict;
import curbwatt.scenarios.assemble.ReadyScenario;
import curbwatt.scenarios.assemble.StudyPlans;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * An invented run with the features that pictures must show: flashing, a trip, a reclose, two engine states. Its
 * figures are plausible, not computed by the engine.
 */
final class SampleStory {

    static final double HOUR_S = 3600;

    private static final List<String> CIRCUITS =
            List.of("amber bar", "arrow board", "scene lights", "cab", "camera mast");

    /** Currents of the circuits while supplied (A). */
    private static final List<Double> MEANS_A = List.of(14.0, 7.5, 22.0, 6.5, 3.0);

    /** Room of the flashing above and below the mean (V). */
    private static final double FLASH_V = 0.11;

    private SampleStory() {}

    /** A night closure of four hours whose lights are cut off at 2:14 and come back at 3:05. */
    static RunStory nightClosure() {
        double hour = HOUR_S;
        return story(
                vehicle(true, true),
                List.of(
                        phase("drive out", EngineMode.DRIVING, 0.25 * hour, 1700),
                        phase("set up", EngineMode.IDLING, 0.35 * hour, 720),
                        phase("lane watch", EngineMode.OFF, 2.4 * hour, 720),
                        phase("clear the lane", EngineMode.IDLING, hour, 720)),
                List.of(
                        new Event(1.73 * hour, EventKind.WARNING_BEGAN, "light cutoff", 11.98, 0.66),
                        new Event(2.05 * hour, EventKind.LOAD_DROPPED_OUT, "radio", 11.6, 0.6),
                        new Event(2.24 * hour, EventKind.CUTOFF_TRIPPED, "light cutoff", 11.78, 0.57),
                        new Event(2.62 * hour, EventKind.RESTART_MARGIN_LOST, "starter", 12.02, 0.55),
                        new Event(3 * hour, EventKind.ENGINE_STARTED, "clear the lane", 9.2, 0.54),
                        new Event(3.09 * hour, EventKind.CUTOFF_RECLOSED, "light cutoff", 13.2, 0.545)));
    }

    /** One phase with the engine off; events as given. */
    static RunStory engineOff(double durationS, List<Event> events) {
        return story(vehicle(true, true), List.of(phase("lane watch", EngineMode.OFF, durationS, 720)), events);
    }

    /** A vehicle without alternator, and nothing flashes. */
    static RunStory withoutAlternator() {
        RunStory story =
                story(vehicle(false, false), List.of(phase("trailer", EngineMode.OFF, 2 * HOUR_S, 0)), List.of());
        return new RunStory(story.scenario(), story.result(), story.trace(), List.of(), story.verdict());
    }

    private static Phase phase(String name, EngineMode mode, double durationS, double engineRpm) {
        return new Phase(name, mode, durationS, 5, EngineSpeed.constant(engineRpm), Set.of());
    }

    private static RunStory story(Vehicle vehicle, List<Phase> phases, List<Event> events) {
        Scene scene = new Scene("sample", new InitialState(0.93, 5), phases);
        double durationS = scene.durationS();
        double spacingS = Math.max(1, durationS / 1440);
        List<TraceRow> rows = new ArrayList<>();
        double charge = 0.93;
        for (int i = 0; i * spacingS <= durationS + 1e-6; i++) {
            TraceRow row = row(i * spacingS, i == 0 ? 0 : spacingS, charge, scene, events);
            charge = row.stateOfChargeFraction();
            rows.add(row);
        }
        ReadyScenario scenario = new ReadyScenario(
                "sample.json",
                "Sample",
                "",
                vehicle,
                List.of(),
                scene,
                Optional.empty(),
                List.of(new Requirement.KeepCharge(0.5)),
                StudyPlans.usual(),
                spacingS,
                List.of(),
                List.of());
        Trace trace = new Trace(spacingS, CIRCUITS, List.of("light cutoff"), rows);
        return new RunStory(
                scenario, result(scene, rows, events), trace, waveform(), new Verdict(List.of(), List.of()));
    }

    private static TraceRow row(double timeS, double stepS, double charge, Scene scene, List<Event> events) {
        boolean runs = phaseAt(scene, timeS - stepS / 2).mode().isRunning();
        boolean open = isOpen(timeS - stepS / 2, events);
        List<Double> circuitA = new ArrayList<>();
        for (int i = 0; i < MEANS_A.size(); i++) {
            double ripple = 1 + 0.04 * Math.sin(timeS / 97 + i);
            circuitA.add(open && i < 3 ? 0 : MEANS_A.get(i) * ripple);
        }
        double loadA = circuitA.stream().mapToDouble(Double::doubleValue).sum();
        double wantedA = runs ? loadA + 30 * (1 - charge) * 2 : 0;
        double speedRpm = phaseAt(scene, timeS - stepS / 2).speed().lowestRpm();
        double alternatorA = Math.min(wantedA, speedRpm > 1000 ? 120 : 46);
        double batteryA = loadA - alternatorA;
        double newCharge = Math.max(0.1, charge - batteryA * stepS / 3600 / 190);
        double nodeV =
                runs && alternatorA >= wantedA ? 14.1 : 11.35 + 1.35 * newCharge + (runs ? 0.35 : 0) - 0.011 * batteryA;
        double swingV = open ? 0.01 : runs && alternatorA >= wantedA ? 0.03 : FLASH_V;
        double dropV = open ? 0 : 0.12;
        return new TraceRow(
                timeS,
                nodeV + (((int) timeS) % 2 == 0 ? swingV : -swingV),
                nodeV - swingV,
                nodeV,
                nodeV + swingV,
                List.of(new SensedSample(nodeV - dropV, nodeV - dropV - 1.4 * swingV, nodeV - dropV + swingV)),
                batteryA,
                alternatorA,
                circuitA,
                newCharge,
                5,
                Optional.empty());
    }

    private static boolean isOpen(double timeS, List<Event> events) {
        boolean open = false;
        for (Event event : events) {
            if (event.timeS() <= timeS) {
                open = event.kind() == EventKind.CUTOFF_TRIPPED || (open && event.kind() != EventKind.CUTOFF_RECLOSED);
            }
        }
        return open;
    }

    private static Phase phaseAt(Scene scene, double timeS) {
        for (int i = scene.phases().size() - 1; i > 0; i--) {
            if (timeS >= scene.startS(i)) {
                return scene.phases().get(i);
            }
        }
        return scene.phases().get(0);
    }

    private static RunResult result(Scene scene, List<TraceRow> rows, List<Event> events) {
        List<PhaseSummary> phases = new ArrayList<>();
        for (int i = 0; i < scene.phases().size(); i++) {
            Phase phase = scene.phases().get(i);
            double startS = scene.startS(i);
            boolean runs = phase.mode().isRunning();
            double loadA = runs ? 50 + 3 * i : 40;
            phases.add(new PhaseSummary(
                    phase.name(),
                    startS,
                    phase.durationS(),
                    runs,
                    loadA,
                    runs ? 46 : 0,
                    loadA - (runs ? 46 : 0),
                    11.8,
                    14.1,
                    0.9,
                    0.6,
                    runs ? OptionalDouble.of(46) : OptionalDouble.empty()));
        }
        TraceRow last = rows.get(rows.size() - 1);
        return new RunResult(
                scene.durationS(),
                events,
                List.of(),
                OptionalDouble.empty(),
                phases,
                List.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                new EngineSummary(0, 0, 0, 0, OptionalDouble.empty()),
                new ChargeLedger(0, 0, 0, 0, 0, 0, 0, 0, 0, 0),
                new EnergyLedger(0, 0, 0, 0, 0, 0, 0, 0, 0),
                11.73,
                2.24 / 4 * scene.durationS(),
                last.stateOfChargeFraction(),
                last.stateOfChargeFraction(),
                20,
                1000);
    }

    /** Four cycles of 800 ms with three switching edges each, two corners for each step. */
    private static List<WaveformPoint> waveform() {
        List<WaveformPoint> points = new ArrayList<>();
        double[][] steps = {{0, 0.25, 38}, {0.25, 0.4, 22}, {0.4, 0.65, 52}, {0.65, 0.8, 22}};
        double readingV = 11.86;
        for (int cycle = 0; cycle < 4; cycle++) {
            for (double[] step : steps) {
                for (int corner = 0; corner < 2; corner++) {
                    double nodeV = 12.32 - 0.0068 * step[2] - 0.002 * corner;
                    double sensedV = nodeV - 0.005 * step[2];
                    readingV += 0.25 * (sensedV - readingV) * corner;
                    points.add(new WaveformPoint(
                            8056 + 0.8 * cycle + step[corner],
                            nodeV,
                            sensedV,
                            readingV,
                            step[2],
                            OptionalDouble.empty()));
                }
            }
        }
        return points;
    }

    private static Vehicle vehicle(boolean withAlternator, boolean flashing) {
        List<Circuit> circuits = new ArrayList<>();
        for (int i = 0; i < CIRCUITS.size(); i++) {
            LoadPattern pattern = flashing && i < 2
                    ? new LoadPattern.Flashing(
                            new FlashClock("bar", 800), List.of(new OnInterval(0, 250), new OnInterval(400, 650)), 0)
                    : new LoadPattern.Continuous();
            String name = i == 3 ? "radio" : CIRCUITS.get(i) + " lamp";
            circuits.add(new Circuit(
                    CIRCUITS.get(i),
                    0.005,
                    List.of(new Load(name, MEANS_A.get(i), 12.8, 0, 0, DropOut.never(), pattern, Set.of()))));
        }
        LowVoltageCutoff cutoff = new LowVoltageCutoff(
                "light cutoff",
                new SensePoint.FeedEnd("amber bar"),
                2,
                0,
                OptionalDouble.of(12.0),
                11.8,
                30,
                new RecloseRule.AboveVoltage(13.2, 60),
                OptionalDouble.empty(),
                Set.of("amber bar", "arrow board", "scene lights"));
        Alternator alternator = new Alternator(
                ReactanceOutputCurve.through(AlternatorLabel.of(70, 160)),
                HotFactor.published(),
                VoltageRegulator.usual(14.2),
                2.7,
                3);
        return new Vehicle(
                "truck 12",
                new BatteryInstallation("main battery", Battery.asNew(parameters()), 5 * HOUR_S),
                withAlternator ? Optional.of(alternator) : Optional.empty(),
                circuits,
                List.of(cutoff),
                new StartingSystem(new Starter(600, 0.1, 180, 1.5, 2.5), CrankingLimit.published(), false));
    }

    private static BatteryParameters parameters() {
        return new BatteryParameters(
                Chemistry.FLOODED, 95, 100, 110, 1.15, new DiffusionModes(List.of(1.0), List.of(0.05), 1), 0.004);
    }
}
