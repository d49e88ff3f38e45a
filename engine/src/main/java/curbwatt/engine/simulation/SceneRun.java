package curbwatt.engine.simulation;

import curbwatt.engine.event.EventKind;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.simulation.book.PhaseBook;
import curbwatt.engine.simulation.book.RunBook;
import curbwatt.engine.simulation.clock.FlashLayouts;
import curbwatt.engine.simulation.device.Actions;
import curbwatt.engine.simulation.device.CalmWatch;
import curbwatt.engine.simulation.device.EngineWatch;
import curbwatt.engine.simulation.device.PackState;
import curbwatt.engine.simulation.envelope.Envelope;
import curbwatt.engine.simulation.envelope.LongStepView;
import curbwatt.engine.simulation.network.CrankProbe;
import curbwatt.engine.simulation.part.EngineState;
import curbwatt.engine.simulation.part.LinkState;
import curbwatt.engine.simulation.part.LoadBank;
import curbwatt.engine.simulation.record.Recorder;
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
    private final RunBook book;
    private final Actions actions;
    private final EngineWatch watch;
    private final Optional<PackState> pack;
    private final Restart restart;
    private final Settling settling;
    private final Optional<Envelope> envelope;
    private final LongStepView longView;
    private final StepView view;
    private double timeS;
    /**
     * When in the step being tried a cutoff, fuse, link or load acts; the engine's devices and the pack act by
     * themselves (s).
     */
    private double devicesS;

    SceneRun(
            Vehicle vehicle,
            Scene scene,
            FlashLayouts layouts,
            StepControl control,
            Fidelity fidelity,
            Recorder recorder) {
        this.vehicle = vehicle;
        this.scene = scene;
        this.recorder = recorder;
        bank = new LoadBank(vehicle, layouts);
        engine = new EngineState(vehicle);
        Optional<LinkState> link = vehicle.auxiliary().map(second -> new LinkState(second.link()));
        stepping = new Stepping(vehicle, scene, control, bank, engine, link);
        book = new RunBook(vehicle, stepping.batteries, bank.circuits, link);
        actions = new Actions(bank, vehicle, link, book);
        watch = new EngineWatch(vehicle.engine(), actions::tap);
        pack = vehicle.auxiliary()
                .flatMap(second -> second.protection()
                        .map(protection -> new PackState(
                                protection, second.installation().name(), stepping.batteries.auxiliary(), book)));
        CrankProbe crank = new CrankProbe(vehicle.starting(), bank.circuits, link);
        restart = new Restart(crank, stepping, book, vehicle.battery().name());
        settling = new Settling(stepping, bank, engine, book);
        envelope = fidelity == Fidelity.RESOLVED
                ? Optional.empty()
                : Optional.of(new Envelope(
                        bank,
                        engine,
                        stepping.batteries,
                        stepping.network(),
                        actions,
                        watch,
                        new CalmWatch(bank, actions, link, watch, pack, engine, restart::isPlain),
                        control.bendV()));
        view = new StepView(stepping, actions.taps(), actions.cutoffs().stream().findFirst(), book.engine());
        longView = envelope.map(found -> new LongStepView(
                        found,
                        stepping.batteries,
                        bank.circuits.size(),
                        actions.taps(),
                        actions.cutoffs().stream().findFirst(),
                        book.engine()))
                .orElse(null);
    }

    RunResult run() {
        for (int i = 0; i < scene.phases().size(); i++) {
            Phase phase = scene.phases().get(i);
            begin(phase, i == 0);
            double endS = scene.startS(i + 1);
            while (endS - timeS > ONE_INSTANT_S) {
                if (envelope.isEmpty() || !longStep(envelope.get(), endS)) {
                    step(endS);
                }
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
        if (!engine.idles()) {
            releaseIdle();
        }
        watch.phaseBegan();
        book.begin(new PhaseBook(phase, timeS, engine.runs(), stepping.starterCharge(), engine.capacityA()));
        bank.begin(phase, timeS);
        engineChanged();
    }

    /** Cranks the engine, if the battery can. */
    private boolean start(String subject) {
        double lowestV = restart.lowestV();
        boolean starts = restart.starts();
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
            restart.begin(timeS);
        }
    }

    private void end(Phase phase, boolean last) {
        if (!engine.runs()) {
            restart.follow(timeS);
        }
        if (!engine.runs() || last) {
            book.crankCheck(restart.check(timeS, phase));
        }
        book.endPhase();
    }

    /** Takes a step over many flashes, if nothing but flashes may switch in it. */
    private boolean longStep(Envelope found, double phaseEndS) {
        bank.passEdges(timeS);
        longView.before();
        double edgesFromS = recorder.edgesFromS(timeS);
        double lengthS = edgesFromS <= timeS ? 0 : found.tryFrom(timeS, Math.min(phaseEndS, edgesFromS), stepping.end);
        if (lengthS == 0) {
            return false;
        }
        double endS = timeS + lengthS < phaseEndS - ONE_INSTANT_S ? timeS + lengthS : phaseEndS;
        found.addTo(book);
        if (recorder.isWatching()) {
            longView.show(recorder, timeS, endS);
        }
        found.take(stepping.end);
        stepping.start.takeFrom(stepping.end);
        book.endLongStep();
        bank.arrive(endS);
        timeS = endS;
        if (!engine.runs()) {
            restart.follow(timeS);
        }
        return true;
    }

    private void step(double phaseEndS) {
        bank.passEdges(timeS);
        settling.settle(timeS);
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
            restart.follow(timeS);
        }
    }

    private double firstS(double lengthS) {
        devicesS = actions.firstS(lengthS, stepping.start, stepping.end, engine.runs());
        double changeS = pack.isPresent() ? pack.get().changesInS(stepping.start.equipment) : 0;
        double packS = changeS > ONE_INSTANT_S ? changeS : Double.POSITIVE_INFINITY;
        double engineS = watch.firstS(timeS, lengthS, stepping.start, stepping.end, engine);
        return Math.min(devicesS, Math.min(packS, engineS));
    }

    private void take(double lengthS, double endS) {
        view.begin(timeS);
        stepping.take(lengthS);
        actions.advance(lengthS, stepping.start, stepping.end, engine.runs());
        if (pack.isPresent()) {
            pack.get().advance(endS, lengthS, stepping.start.equipment);
        }
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
        envelope.ifPresent(Envelope::interrupt);
        if (!engine.runs()) {
            restart.follow(timeS);
        }
        if (deviceActs) {
            actions.act(timeS, stepping.end, stepping.starterCharge());
        }
        actOnEngine();
        if (!engine.runs()) {
            restart.begin(timeS);
        }
    }

    /** An engine that does not idle any more is not held at its idle either. */
    private void releaseIdle() {
        vehicle.engine().highIdle().ifPresent(control -> {
            if (engine.holdIdleAt(0)) {
                event(EventKind.IDLE_RELEASED, control.name(), stepping.endV());
            }
        });
    }

    private void actOnEngine() {
        vehicle.engine().highIdle().filter(control -> engine.idles()).ifPresent(control -> {
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
                releaseIdle();
                event(EventKind.ENGINE_STOPPED, device.name(), stepping.endV());
                engineChanged();
            }
        });
    }
}
