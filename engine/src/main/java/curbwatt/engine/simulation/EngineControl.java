package curbwatt.engine.simulation;

import curbwatt.engine.event.EventKind;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.simulation.book.RunBook;
import curbwatt.engine.simulation.device.Actions;
import curbwatt.engine.simulation.device.EngineWatch;
import curbwatt.engine.simulation.part.EngineState;
import curbwatt.engine.vehicle.EngineEquipment;

/** Starts and stops the engine and holds its idle, as phases and devices want it. */
final class EngineControl {

    private final EngineEquipment equipment;
    private final EngineState engine;
    private final Stepping stepping;
    private final EngineWatch watch;
    private final Actions actions;
    private final Restart restart;
    private final RunBook book;

    EngineControl(
            EngineEquipment equipment,
            EngineState engine,
            Stepping stepping,
            EngineWatch watch,
            Actions actions,
            Restart restart,
            RunBook book) {
        this.equipment = equipment;
        this.engine = engine;
        this.stepping = stepping;
        this.watch = watch;
        this.actions = actions;
        this.restart = restart;
        this.book = book;
    }

    /** A phase begins: the engine is started or stopped if it wants that. The first finds it as it wants it. */
    void begin(Phase phase, double timeS, boolean first) {
        boolean ran = engine.runs();
        boolean wanted = phase.mode().isRunning();
        engine.begin(phase, timeS, wanted && (ran || first));
        if (wanted && !ran && !first) {
            start(phase.name(), timeS);
        } else if (ran && !wanted) {
            event(EventKind.ENGINE_STOPPED, phase.name(), timeS, stepping.endV());
        }
        if (!engine.idles()) {
            releaseIdle(timeS);
        }
        watch.phaseBegan();
    }

    /** Cranks the engine, if the battery can. */
    private boolean start(String subject, double timeS) {
        double lowestV = restart.lowestV();
        boolean starts = restart.starts();
        event(starts ? EventKind.ENGINE_STARTED : EventKind.ENGINE_DID_NOT_START, subject, timeS, lowestV);
        if (starts) {
            engine.start(timeS, stepping.batteries.starter().temperatureC());
            book.engineStarted();
        }
        return starts;
    }

    /** What follows from the engine's running, or its standing. */
    void changed(double timeS) {
        if (engine.runs()) {
            actions.engineRuns(timeS, stepping.endV(), stepping.starterCharge());
            restart.rest();
        } else {
            restart.begin(timeS);
        }
    }

    /** Does what the idle control and the automatic start want. */
    void act(double timeS) {
        equipment.highIdle().filter(control -> engine.idles()).ifPresent(control -> {
            double heldRpm = watch.isRaised() ? control.highIdleRpm() : 0;
            if (engine.holdIdleAt(heldRpm)) {
                EventKind did = watch.isRaised() ? EventKind.IDLE_RAISED : EventKind.IDLE_RELEASED;
                event(did, control.name(), timeS, stepping.endV());
            }
        });
        equipment.automaticStart().ifPresent(device -> {
            if (watch.wantsRunning() && !engine.runs()) {
                if (start(device.name(), timeS)) {
                    engine.runAt(device.idleRpm());
                    changed(timeS);
                } else {
                    watch.startFailed(timeS);
                }
            } else if (!watch.wantsRunning() && engine.isRunByDevice()) {
                engine.stop(timeS);
                releaseIdle(timeS);
                event(EventKind.ENGINE_STOPPED, device.name(), timeS, stepping.endV());
                changed(timeS);
            }
        });
    }

    /** An engine that does not idle any more is not held at its idle either. */
    private void releaseIdle(double timeS) {
        equipment.highIdle().ifPresent(control -> {
            if (engine.holdIdleAt(0)) {
                event(EventKind.IDLE_RELEASED, control.name(), timeS, stepping.endV());
            }
        });
    }

    private void event(EventKind kind, String subject, double timeS, double voltageV) {
        book.event(timeS, kind, subject, voltageV, stepping.starterCharge());
    }
}
