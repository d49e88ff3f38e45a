package curbwatt.engine.simulation;

import curbwatt.engine.event.EventKind;
import curbwatt.engine.result.CrankCheck;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.simulation.book.PhaseBook;
import curbwatt.engine.simulation.book.RunBook;
import curbwatt.engine.simulation.device.Actions;
import curbwatt.engine.simulation.device.EngineWatch;
import curbwatt.engine.simulation.device.PackState;
import curbwatt.engine.simulation.device.RestartWatch;
import curbwatt.engine.simulation.network.CrankProbe;
import curbwatt.engine.simulation.part.Batteries;
import curbwatt.engine.simulation.part.CircuitState;
import curbwatt.engine.simulation.part.EngineState;
import curbwatt.engine.simulation.part.LinkState;
import curbwatt.engine.simulation.part.LoadBank;
import curbwatt.engine.simulation.record.Recorder;
import curbwatt.engine.vehicle.BusNode;
import curbwatt.engine.vehicle.Vehicle;
import java.util.Optional;

/**
 * One run of one scene: everything that changes while time passes is reachable from here.
 *
 * <p>A step goes from one instant at which something switches to the next, or shorter; it is cut at the first instant
 * at
 * which a device acts.
 */
final class SceneRun {

    private static final double ONE_INSTANT_S = 1e-6;
    private static final int MOST_CUTS = 8;

    private final Vehicle vehicle;
    private final Scene scene;
    private final Recorder recorder;
    private final LoadBank bank;
    private final EngineState engine;
    private final Stepping stepping;
    private final CrankProbe crank;
    private final RunBook book;
    private final Actions actions;
    private final EngineWatch watch;
    private final Optional<PackState> pack;
    private final RestartWatch restart;
    private final StepView view;
    private double timeS;
    /**
     * When in the step being tried a cutoff, fuse, link or load acts; the engine's devices and the pack act by
     * themselves (s).
     */
    private double devicesS;

    SceneRun(Vehicle vehicle, Scene scene, StepControl control, Recorder recorder) {
        this.vehicle = vehicle;
        this.scene = scene;
        this.recorder = recorder;
        bank = new LoadBank(vehicle);
        engine = new EngineState(vehicle);
        Optional<LinkState> link = vehicle.auxiliary().map(second -> new LinkState(second.link()));
        stepping = new Stepping(vehicle, scene, control, bank, engine, link);
        crank = new CrankProbe(vehicle.starting(), bank.circuits, link);
        book = new RunBook(vehicle, stepping.batteries, bank.circuits, link);
        actions = new Actions(bank, vehicle, link, book);
        watch = new EngineWatch(vehicle.engine(), actions::tap);
        pack = vehicle.auxiliary()
                .flatMap(second -> second.protection()
                        .map(protection -> new PackState(
                                protection, second.installation().name(), stepping.batteries.auxiliary(), book)));
        restart = new RestartWatch(book, vehicle.battery().name());
        view = new StepView(stepping, actions.taps(), actions.cutoffs().stream().findFirst(), book.engine());
    }

    RunResult run() {
        for (int i = 0; i < scene.phases().size(); i++) {
            Phase phase = scene.phases().get(i);
            begin(phase, i == 0);
            double endS = scene.startS(i + 1);
            while (endS - timeS > ONE_INSTANT_S) {
                step(endS);
            }
            timeS = endS;
            end(phase, i == scene.phases().size() - 1);
        }
        event(EventKind.SCENE_ENDED, scene.name(), stepping.endV());
        return book.result(timeS, restart.firstLostS(), watch.raisedS(timeS), watch.raises());
    }

    private void event(EventKind kind, String subject, double voltageV) {
        book.event(timeS, kind, subject, voltageV, stepping.starterCharge());
    }

    private void begin(Phase phase, boolean first) {
        boolean ran = engine.runs();
        boolean wanted = phase.mode().isRunning();
        event(EventKind.PHASE_BEGAN, phase.name(), stepping.endV());
        engine.begin(phase, timeS, wanted && (ran || first));
        if (wanted && !ran && !first) {
            start(phase.name());
        } else if (ran && !wanted) {
            event(EventKind.ENGINE_STOPPED, phase.name(), stepping.endV());
        }
        watch.phaseBegan();
        book.begin(new PhaseBook(phase, timeS, engine.runs(), stepping.starterCharge(), engine.capacityA()));
        bank.begin(phase, timeS);
        engineChanged();
    }

    /** Cranks the engine, if the battery can. */
    private boolean start(String subject) {
        double lowestV = crank.lowestV(stepping.batteries);
        boolean starts = lowestV >= crank.minimumV(stepping.batteries);
        event(starts ? EventKind.ENGINE_STARTED : EventKind.ENGINE_DID_NOT_START, subject, lowestV);
        if (starts) {
            engine.start(timeS, stepping.batteries.starter().temperatureC());
            book.engineStarted();
        }
        return starts;
    }

    /** What follows from the engine's running, or its standing. */
    private void engineChanged() {
        if (engine.runs()) {
            actions.engineRuns(timeS, stepping.endV(), stepping.starterCharge());
            restart.rest();
        } else {
            restart.begin(timeS, crank.marginV(stepping.batteries), stepping.endV(), stepping.starterCharge());
        }
    }

    private void end(Phase phase, boolean last) {
        if (!engine.runs()) {
            followRestart();
        }
        if (!engine.runs() || last) {
            Batteries batteries = stepping.batteries;
            book.crankCheck(new CrankCheck(
                    timeS,
                    phase.name(),
                    batteries.starter().temperatureC(),
                    crank.lowestV(batteries),
                    crank.lowestV(batteries, false),
                    crank.minimumV(batteries)));
        }
        book.endPhase();
    }

    private void step(double phaseEndS) {
        bank.passEdges(timeS);
        settle();
        double edgeS = Math.min(phaseEndS, bank.nextEdgeS());
        double lengthS = stepping.tryFrom(timeS, Math.min(edgeS - timeS, engine.straightForS(timeS)));
        double actsS = firstS(lengthS);
        // not shorter than an instant: rounding could put the crossing off again and again while the clock stands still
        for (int cut = 0; cut < MOST_CUTS && actsS < lengthS - ONE_INSTANT_S && actsS > ONE_INSTANT_S; cut++) {
            lengthS = stepping.solveEnd(timeS, actsS) ? actsS : lengthS;
            actsS = firstS(lengthS);
        }
        boolean acts = actsS <= lengthS;
        if (acts && actsS < lengthS) {
            stepping.cut(actsS / lengthS);
            lengthS = actsS;
        }
        take(lengthS, acts || timeS + lengthS < edgeS - 1e-9 ? timeS + lengthS : edgeS);
        if (acts) {
            act(devicesS <= actsS + ONE_INSTANT_S);
        } else if (!engine.runs() && restart.isDue(timeS)) {
            followRestart();
        }
    }

    private double firstS(double lengthS) {
        devicesS = actions.firstS(lengthS, stepping.start, stepping.end, engine.runs());
        double packS = pack.map(state -> state.changesInS(stepping.start.equipment))
                .filter(changeS -> changeS > ONE_INSTANT_S)
                .orElse(Double.POSITIVE_INFINITY);
        double engineS = watch.firstS(timeS, lengthS, stepping.start, stepping.end, engine);
        return Math.min(devicesS, Math.min(packS, engineS));
    }

    /** Solves the start of a step; what has no operating point falls silent, one circuit at a time. */
    private void settle() {
        while (true) {
            switch (stepping.solveStart(timeS)) {
                case SOLVED -> {
                    return;
                }
                case CIRCUIT_COLLAPSED -> {
                    CircuitState failed = stepping.network().failedCircuit();
                    event(EventKind.VOLTAGE_COLLAPSED, failed.circuit.name(), stepping.start.starter.nodeV);
                    collapse(bank.circuits.indexOf(failed));
                }
                case NODE_COLLAPSED -> {
                    BusNode node = stepping.network().failedNode();
                    String subject = node == BusNode.STARTER ? "node" : "equipment node";
                    event(EventKind.VOLTAGE_COLLAPSED, subject, stepping.start.starter.nodeV);
                    fallSilent(node);
                }
            }
        }
    }

    /** Takes everything off a node that has no operating point: its circuits, and then the starter. */
    private void fallSilent(BusNode node) {
        boolean fed = false;
        for (int c = 0; c < bank.circuits.size(); c++) {
            if (bank.circuits.get(c).circuit.node() == node) {
                fed |= bank.circuits.get(c).isFed();
                collapse(c);
            }
        }
        if (!fed && !engine.letGoOfStarter(timeS)) {
            throw new IllegalStateException(
                    "no operating point at " + timeS + " s with nothing left on the " + node + " node");
        }
    }

    private void collapse(int place) {
        CircuitState circuit = bank.circuits.get(place);
        if (circuit.isFed()) {
            bank.collapse(circuit, timeS);
            book.lost(place, timeS, circuit.circuit.name());
        }
    }

    private void take(double lengthS, double endS) {
        view.begin(timeS);
        stepping.take(lengthS);
        actions.advance(lengthS, stepping.start, stepping.end, engine.runs());
        pack.ifPresent(state -> state.advance(endS, lengthS, stepping.start.equipment));
        watch.advance(timeS, endS, stepping.start, stepping.end, engine);
        book.add(timeS, lengthS, stepping.start, stepping.end, engine);
        double middleS = timeS + 0.5 * lengthS;
        stepping.batteries.warm(engine.airC(middleS), engine.underHoodC(middleS), lengthS);
        view.end(endS);
        if (endS > timeS) {
            recorder.record(view);
        }
        timeS = endS;
    }

    private void act(boolean deviceActs) {
        if (!engine.runs()) {
            followRestart();
        }
        if (deviceActs) {
            actions.act(timeS, stepping.end, stepping.starterCharge());
        }
        actOnEngine();
        if (!engine.runs()) {
            restart.begin(timeS, crank.marginV(stepping.batteries), stepping.endV(), stepping.starterCharge());
        }
    }

    private void actOnEngine() {
        vehicle.engine().highIdle().ifPresent(control -> {
            double heldRpm = watch.isRaised() ? control.highIdleRpm() : 0;
            if (engine.holdIdleAt(heldRpm)) {
                EventKind did = watch.isRaised() ? EventKind.IDLE_RAISED : EventKind.IDLE_RELEASED;
                event(did, control.name(), stepping.endV());
            }
        });
        vehicle.engine().automaticStart().ifPresent(device -> {
            if (watch.wantsRunning() && !engine.runs()) {
                if (start(device.name())) {
                    engine.runAt(device.idleRpm());
                    engineChanged();
                } else {
                    watch.startFailed(timeS);
                }
            } else if (!watch.wantsRunning() && engine.isRunByDevice()) {
                engine.stop(timeS);
                event(EventKind.ENGINE_STOPPED, device.name(), stepping.endV());
                engineChanged();
            }
        });
    }

    private void followRestart() {
        restart.ask(timeS, crank.marginV(stepping.batteries), stepping.endV(), stepping.starterCharge());
        book.noteCold();
    }
}
