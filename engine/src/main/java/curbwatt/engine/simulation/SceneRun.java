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
import java.util.function.BooleanSupplier;

/**
 * One run of one scene: everything that changes while time passes is reachable from here.
 *
 * <p>A step goes from one instant at which something switches to the next, or shorter; it is cut at the first instant at which
 * a device acts.
 */
final class SceneRun {

    private static final double ONE_INSTANT_S = 1e-6;
    private static final int MOST_CUTS = 8;

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
    private final EngineControl control;
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
            StepControl fineness,
            Fidelity fidelity,
            Recorder recorder) {
        this.scene = scene;
        this.recorder = recorder;
        bank = new LoadBank(vehicle, layouts);
        engine = new EngineState(vehicle);
        Optional<LinkState> link = vehicle.auxiliary().map(second -> new LinkState(second.link()));
        stepping = new Stepping(vehicle, scene, fineness, bank, engine, link);
        book = new RunBook(vehicle, stepping.batteries, bank.circuits, link);
        actions = new Actions(bank, vehicle, link, book);
        watch = new EngineWatch(vehicle.engine(), actions::tap);
        pack = vehicle.auxiliary()
                .flatMap(second -> second.protection()
                        .map(protection -> new PackState(
                                protection, second.installation().name(), stepping.batteries.auxiliary(), book)));
        CrankProbe crank = new CrankProbe(vehicle.starting(), bank.circuits, link);
        restart = new Restart(crank, stepping, book, vehicle.battery().name());
        control = new EngineControl(vehicle.engine(), engine, stepping, watch, actions, restart, book);
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
                        fineness.bendV()));
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

    /** Runs the scene to its end. */
    RunResult run() {
        return runWhile(() -> true).orElseThrow();
    }

    /** Runs it to its end, or gives up where the engine would not start any more: empty. */
    Optional<RunResult> runWhileItStarts() {
        return runWhile(() -> restart.firstLostS().isEmpty());
    }

    private Optional<RunResult> runWhile(BooleanSupplier goesOn) {
        for (int i = 0; i < scene.phases().size(); i++) {
            Phase phase = scene.phases().get(i);
            begin(phase, i == 0);
            double endS = scene.startS(i + 1);
            while (endS - timeS > ONE_INSTANT_S && goesOn.getAsBoolean()) {
                if (envelope.isEmpty() || !longStep(envelope.get(), endS)) {
                    step(endS);
                }
            }
            if (!goesOn.getAsBoolean()) {
                return Optional.empty();
            }
            timeS = endS;
            end(phase, i == scene.phases().size() - 1);
        }
        event(EventKind.SCENE_ENDED, scene.name(), stepping.endV());
        return goesOn.getAsBoolean()
                ? Optional.of(book.result(timeS, restart.firstLostS(), watch.raisedS(timeS), watch.raises()))
                : Optional.empty();
    }

    private void event(EventKind kind, String subject, double voltageV) {
        book.event(timeS, kind, subject, voltageV, stepping.starterCharge());
    }

    private void begin(Phase phase, boolean first) {
        event(EventKind.PHASE_BEGAN, phase.name(), stepping.endV());
        control.begin(phase, timeS, first);
        book.begin(new PhaseBook(phase, timeS, engine.runs(), stepping.starterCharge(), engine.capacityA()));
        bank.begin(phase, timeS);
        control.changed(timeS);
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
        control.act(timeS);
        if (!engine.runs()) {
            restart.begin(timeS);
        }
    }
}
