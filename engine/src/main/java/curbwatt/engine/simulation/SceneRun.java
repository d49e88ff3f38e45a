package curbwatt.engine.simulation;

import curbwatt.engine.alternator.Alternator;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.result.CrankCheck;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.vehicle.Vehicle;
import java.util.OptionalDouble;

/**
 * One run of one scene: everything that changes while time passes is reachable from here.
 *
 * <p>A step goes from one instant at which something switches to the next, or shorter. It is tried with the current at
 * its
 * start, solved again at its end, cut at the first instant at which a device acts, and then taken with the mean
 * current.
 */
final class SceneRun {

    private static final double ONE_INSTANT_S = 1e-6;
    private static final int MOST_CUTS = 8;

    private final Vehicle vehicle;
    private final Scene scene;
    private final Recorder recorder;
    private final StepControl control;
    private final LoadBank bank;
    private final BatteryWork battery;
    private final BatteryWork trial;
    private final NodeSolver solver;
    private final OperatingPoint start;
    private final OperatingPoint end;
    private final EngineState engine;
    private final CrankProbe crank;
    private final RunBook book;
    private final Actions actions;
    private final RestartWatch restart;
    private final StepView view;
    private double timeS;
    private double proposedS = 1;

    SceneRun(Vehicle vehicle, Scene scene, StepControl control, Recorder recorder) {
        this.vehicle = vehicle;
        this.scene = scene;
        this.recorder = recorder;
        this.control = control;
        bank = new LoadBank(vehicle);
        battery = new BatteryWork(vehicle.battery(), scene.start());
        trial = battery.copy();
        solver = new NodeSolver(bank.circuits);
        start = new OperatingPoint(bank.circuits.size());
        end = new OperatingPoint(bank.circuits.size());
        engine = new EngineState(vehicle.alternator());
        crank = new CrankProbe(vehicle.starting(), bank.circuits);
        book = new RunBook(battery, bank.circuits);
        actions = new Actions(bank, vehicle.cutoffs(), book);
        end.nodeV = battery.terminal().idleV(battery.removedAh(), battery.totalBoundAh());
        restart = new RestartWatch(book, vehicle.battery().name());
        view = new StepView(
                start,
                end,
                actions.firstSenseCircuit(),
                actions.cutoffs().stream().findFirst());
    }

    RunResult run() {
        for (int i = 0; i < scene.phases().size(); i++) {
            Phase phase = scene.phases().get(i);
            begin(phase, i == 0);
            double endS = scene.startS(i + 1);
            while (endS - timeS > ONE_INSTANT_S) {
                step(phase, endS);
            }
            timeS = endS;
            if (!engine.runs()) {
                followRestart();
            }
            boolean last = i == scene.phases().size() - 1;
            if (!engine.runs() || last) {
                checkCrank(phase);
            }
            book.endPhase();
        }
        book.event(timeS, EventKind.SCENE_ENDED, scene.name(), end.nodeV, battery.stateOfChargeFraction());
        return book.result(timeS, restart.firstLostS());
    }

    private void begin(Phase phase, boolean first) {
        double charge = battery.stateOfChargeFraction();
        boolean ran = engine.runs();
        boolean wanted = phase.mode().isRunning();
        boolean cranks = wanted && !ran && !first;
        double lowestV = cranks ? crank.lowestV(battery) : 0;
        boolean runs = wanted && (!cranks || lowestV >= crank.minimumV(battery));
        book.event(timeS, EventKind.PHASE_BEGAN, phase.name(), end.nodeV, charge);
        engine.begin(phase, timeS, runs);
        if (cranks) {
            EventKind did = runs ? EventKind.ENGINE_STARTED : EventKind.ENGINE_DID_NOT_START;
            book.event(timeS, did, phase.name(), lowestV, charge);
            if (runs) {
                engine.started(timeS);
            }
        } else if (ran && !wanted) {
            book.event(timeS, EventKind.ENGINE_STOPPED, phase.name(), end.nodeV, charge);
        }
        OptionalDouble capacityA = runs && vehicle.alternator().isPresent()
                ? OptionalDouble.of(capacityA(vehicle.alternator().get(), phase))
                : OptionalDouble.empty();
        book.begin(new PhaseBook(phase, timeS, runs, charge, capacityA));
        bank.begin(phase, timeS);
        if (runs) {
            actions.engineRuns(timeS, end.nodeV, charge);
            restart.rest();
        } else {
            restart.begin(timeS, crank.marginV(battery), end.nodeV, charge);
        }
    }

    private static double capacityA(Alternator alternator, Phase phase) {
        return alternator.maximumA(phase.speed().lowestRpm());
    }

    private void checkCrank(Phase phase) {
        book.crankCheck(new CrankCheck(
                timeS,
                phase.name(),
                battery.temperatureC(),
                crank.lowestV(battery),
                crank.lowestV(battery, false),
                crank.minimumV(battery)));
    }

    private void step(Phase phase, double phaseEndS) {
        bank.passEdges(timeS);
        settle();
        double edgeS = Math.min(phaseEndS, bank.nextEdgeS());
        double lengthS = tryStep(Math.min(edgeS - timeS, engine.straightForS(timeS)));
        double actsS = actions.firstS(lengthS, start, end, engine.runs());
        // not shorter than an instant: rounding could put the crossing off again and again while the clock stands still
        for (int cut = 0; cut < MOST_CUTS && actsS < lengthS - ONE_INSTANT_S && actsS > ONE_INSTANT_S; cut++) {
            lengthS = solveEnd(actsS) ? actsS : lengthS;
            actsS = actions.firstS(lengthS, start, end, engine.runs());
        }
        boolean acts = actsS <= lengthS;
        if (acts && actsS < lengthS) {
            end.mix(start, end, actsS / lengthS);
            lengthS = actsS;
        }
        take(phase, lengthS, acts || timeS + lengthS < edgeS - 1e-9 ? timeS + lengthS : edgeS);
        if (acts) {
            act();
        } else if (!engine.runs() && restart.isDue(timeS)) {
            followRestart();
        }
    }

    /** Solves the start of a step; what has no operating point falls silent, one circuit at a time. */
    private void settle() {
        while (true) {
            switch (solver.solve(battery, engine.alternatorMaxA(timeS), engine.setPointV(), start)) {
                case SOLVED -> {
                    return;
                }
                case CIRCUIT_COLLAPSED -> {
                    int failed = solver.failedCircuit();
                    collapsed(bank.circuits.get(failed).circuit.name());
                    collapse(failed);
                }
                case NODE_COLLAPSED -> {
                    collapsed("node");
                    for (int c = 0; c < bank.circuits.size(); c++) {
                        collapse(c);
                    }
                }
            }
        }
    }

    private void collapsed(String subject) {
        book.event(timeS, EventKind.VOLTAGE_COLLAPSED, subject, start.nodeV, battery.stateOfChargeFraction());
    }

    private void collapse(int place) {
        CircuitState circuit = bank.circuits.get(place);
        if (circuit.isFed()) {
            bank.collapse(circuit);
            book.lost(place, timeS, circuit.circuit.name());
        }
    }

    /** Finds a step short enough to be exact, and solves its end. */
    private double tryStep(double longestS) {
        double lengthS = Math.min(longestS, proposedS);
        while (true) {
            boolean solved = solveEnd(lengthS);
            double used =
                    solved ? control.used(lengthS, start, end, battery.battery.capacityAh()) : Double.POSITIVE_INFINITY;
            if (used <= 1 || lengthS <= StepControl.SHORTEST_S) {
                if (!solved) {
                    end.takeFrom(start);
                }
                if (lengthS == proposedS || used > 0.4) {
                    proposedS = control.next(lengthS, used);
                }
                return lengthS;
            }
            lengthS = Math.max(StepControl.SHORTEST_S, lengthS * Math.max(0.1, Math.min(0.5, 0.8 / used)));
            proposedS = lengthS;
        }
    }

    private boolean solveEnd(double lengthS) {
        trial.takeFrom(battery);
        trial.advance(start.mainA, lengthS);
        end.takeFrom(start);
        double endS = timeS + lengthS;
        return solver.solve(trial, engine.alternatorMaxA(endS), engine.setPointV(), end) == NodeSolver.Outcome.SOLVED;
    }

    private void take(Phase phase, double lengthS, double endS) {
        double startCharge = battery.stateOfChargeFraction();
        battery.advance(0.5 * (start.mainA + end.mainA), lengthS);
        actions.advance(lengthS, start, end, engine.runs());
        book.add(timeS, lengthS, start, end, startCharge);
        battery.warm(phase.airC(), lengthS);
        view.startS = timeS;
        view.endS = endS;
        view.chargeStartFraction = startCharge;
        view.chargeEndFraction = battery.stateOfChargeFraction();
        view.batteryC = battery.temperatureC();
        view.readCutoff();
        if (endS > timeS) {
            recorder.record(view);
        }
        timeS = endS;
    }

    private void act() {
        if (!engine.runs()) {
            followRestart();
        }
        double charge = battery.stateOfChargeFraction();
        actions.act(timeS, end, charge);
        if (!engine.runs()) {
            restart.begin(timeS, crank.marginV(battery), end.nodeV, charge);
        }
    }

    private void followRestart() {
        restart.ask(timeS, crank.marginV(battery), end.nodeV, battery.stateOfChargeFraction());
        book.noteCold();
    }
}
