package curbwatt.engine.study;

import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.powertrain.EngineSpeed;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.simulation.Simulation;

/**
 * The engine idles at least so fast in every phase in which it idles.
 *
 * @param idleRpm least engine speed (1/min)
 */
public record FasterIdle(double idleRpm) implements Variation {

    @Override
    public Simulation of(Simulation base) {
        return base.in(base.scene()
                .withPhases(base.scene().phases().stream().map(this::faster).toList()));
    }

    private Phase faster(Phase phase) {
        if (phase.mode() != EngineMode.IDLING) {
            return phase;
        }
        EngineSpeed speed = new EngineSpeed(phase.speed().points().stream()
                .map(point -> new EngineSpeed.Point(point.timeS(), Math.max(idleRpm, point.engineRpm())))
                .toList());
        return new Phase(phase.name(), phase.mode(), phase.durationS(), phase.air(), speed, phase.stages());
    }
}
