package curbwatt.engine.simulation;

import curbwatt.engine.alternator.Alternator;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.result.CrankCheck;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.vehicle.BusNode;
import curbwatt.engine.vehicle.Vehicle;
import java.util.Optional;
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
    private final Batteries batteries;
    private final Batteries trial;
    private final Network network;
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
        batteries = new Batteries(vehicle, scene.start());
        trial = batteries.copy();
        Optional<LinkState> link = vehicle.auxiliary().map(second -> new LinkState(second.link()));
        network = new Network(bank.circuits, link.orElse(null));
        start = new OperatingPoint(bank.circuits.size());
        end = new OperatingPoint(bank.circuits.size());
        engine = new EngineState(vehicle.alternator());
        crank = new CrankProbe(vehicle.starting(), bank.circuits, link);
        book = new RunBook(vehicle, batteries, bank.circuits, link);
        actions = new Actions(bank, vehicle, link, book);
        end.starter.nodeV = batteries.starter().idleV();
        end.equipment.nodeV = batteries.areTwo() ? batteries.auxiliary().idleV() : 0;
        restart = new RestartWatch(book, vehicle.battery().name());
        view = new StepView(
                start,
                end,
                actions.firstTap(),
                batteries.areTwo(),
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
            boolean last = i == scene.phases().size() - 1;
            if (!engine.runs() || last) {
                checkCrank(phase);
            }
            book.endPhase();
        }
        book.event(
                timeS,
                EventKind.SCENE_ENDED,
                scene.name(),
                end.starter.nodeV,
                batteries.starter().stateOfChargeFraction());
        return book.result(timeS, restart.firstLostS());
    }

    private void begin(Phase phase, boolean first) {
        double charge = batteries.starter().stateOfChargeFraction();
        boolean ran = engine.runs();
        boolean wanted = phase.mode().isRunning();
        boolean cranks = wanted && !ran && !first;
        double lowestV = cranks ? crank.lowestV(batteries) : 0;
        boolean runs = wanted && (!cranks || lowestV >= crank.minimumV(batteries));
        book.event(timeS, EventKind.PHASE_BEGAN, phase.name(), end.starter.nodeV, charge);
        engine.begin(phase, timeS, runs);
        if (cranks) {
            EventKind did = runs ? EventKind.ENGINE_STARTED : EventKind.ENGINE_DID_NOT_START;
            book.event(timeS, did, phase.name(), lowestV, charge);
            if (runs) {
                engine.started(timeS);
            }
        } else if (ran && !wanted) {
            book.event(timeS, EventKind.ENGINE_STOPPED, phase.name(), end.starter.nodeV, charge);
        }
        OptionalDouble capacityA = runs && vehicle.alternator().isPresent()
                ? OptionalDouble.of(capacityA(vehicle.alternator().get(), phase))
                : OptionalDouble.empty();
        book.begin(new PhaseBook(phase, timeS, runs, charge, capacityA));
        bank.begin(phase, timeS);
        if (runs) {
            actions.engineRuns(timeS, end.starter.nodeV, charge);
            restart.rest();
        } else {
            restart.begin(timeS, crank.marginV(batteries), end.starter.nodeV, charge);
        }
    }

    private static double capacityA(Alternator alternator, Phase phase) {
        return alternator.maximumA(phase.speed().lowestRpm());
    }

    private void checkCrank(Phase phase) {
        book.crankCheck(new CrankCheck(
                timeS,
                phase.name(),
                batteries.starter().temperatureC(),
                crank.lowestV(batteries),
                crank.lowestV(batteries, false),
                crank.minimumV(batteries)));
    }

    private void step(Phase phase, double phaseEndS) {
        bank.passEdges(timeS);
        settle();
        double edgeS = Math.min(phaseEndS, bank.nextEdgeS());
        double lengthS = tryStep(Math.min(edgeS - timeS, engine.straightForS(timeS)));
        double actsS = actions.firstS(lengthS, start, end, engine.runs());
        for (int cut = 0; cut < MOST_CUTS && actsS < lengthS - ONE_INSTANT_S && actsS > 0; cut++) {
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
            switch (network.solve(batteries, engine.alternatorMaxA(timeS), engine.setPointV(), start)) {
                case SOLVED -> {
                    return;
                }
                case CIRCUIT_COLLAPSED -> {
                    CircuitState failed = network.failedCircuit();
                    collapsed(failed.circuit.name());
                    collapse(bank.circuits.indexOf(failed));
                }
                case NODE_COLLAPSED -> {
                    BusNode node = network.failedNode();
                    collapsed(node == BusNode.STARTER ? "node" : "equipment node");
                    for (int c = 0; c < bank.circuits.size(); c++) {
                        if (bank.circuits.get(c).circuit.node() == node) {
                            collapse(c);
                        }
                    }
                }
            }
        }
    }

    private void collapsed(String subject) {
        book.event(
                timeS,
                EventKind.VOLTAGE_COLLAPSED,
                subject,
                start.starter.nodeV,
                batteries.starter().stateOfChargeFraction());
    }

    private void collapse(int place) {
        CircuitState circuit = bank.circuits.get(place);
        if (circuit.isFed()) {
            bank.collapse(circuit, timeS);
            book.lost(place, timeS, circuit.circuit.name());
        }
    }

    /** Finds a step short enough to be exact, and solves its end. */
    private double tryStep(double longestS) {
        double lengthS = Math.min(longestS, proposedS);
        while (true) {
            boolean solved = solveEnd(lengthS);
            double used = solved ? used(lengthS) : Double.POSITIVE_INFINITY;
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

    private double used(double lengthS) {
        double used = control.used(
                lengthS, start.starter, end.starter, batteries.starter().battery.capacityAh());
        return batteries.areTwo()
                ? Math.max(
                        used,
                        control.used(
                                lengthS,
                                start.equipment,
                                end.equipment,
                                batteries.auxiliary().battery.capacityAh()))
                : used;
    }

    private boolean solveEnd(double lengthS) {
        trial.takeFrom(batteries);
        trial.advance(start, lengthS);
        end.takeFrom(start);
        double endS = timeS + lengthS;
        return network.solve(trial, engine.alternatorMaxA(endS), engine.setPointV(), end) == NodeSolver.Outcome.SOLVED;
    }

    private void take(Phase phase, double lengthS, double endS) {
        double startCharge = batteries.starter().stateOfChargeFraction();
        batteries.advance(start, end, lengthS);
        actions.advance(lengthS, start, end, engine.runs());
        book.add(timeS, lengthS, start, end);
        batteries.warm(phase.airC(), lengthS);
        view.startS = timeS;
        view.endS = endS;
        view.chargeStartFraction = startCharge;
        view.chargeEndFraction = batteries.starter().stateOfChargeFraction();
        if (batteries.areTwo()) {
            view.auxiliaryChargeEndFraction = batteries.auxiliary().stateOfChargeFraction();
            view.auxiliaryC = batteries.auxiliary().temperatureC();
        }
        view.batteryC = batteries.starter().temperatureC();
        view.readCutoff();
        if (lengthS > 0) {
            recorder.record(view);
        }
        timeS = endS;
    }

    private void act() {
        if (!engine.runs()) {
            followRestart();
        }
        double charge = batteries.starter().stateOfChargeFraction();
        actions.act(timeS, end, charge);
        if (!engine.runs()) {
            restart.begin(timeS, crank.marginV(batteries), end.starter.nodeV, charge);
        }
    }

    private void followRestart() {
        restart.ask(
                timeS,
                crank.marginV(batteries),
                end.starter.nodeV,
                batteries.starter().stateOfChargeFraction());
        book.noteCold();
    }
}
