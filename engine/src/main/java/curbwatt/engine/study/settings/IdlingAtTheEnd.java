package curbwatt.engine.study.settings;

import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.powertrain.EngineSpeed;
import curbwatt.engine.scene.AirTemperature;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.study.Variation;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * In every phase with the engine off but the equipment in use, the engine idles for a share of the time, at its end. The
 * share becomes a phase of its own, which bears the phase's name and a remark.
 *
 * @param idlingFraction the share, above 0 and below 1
 * @param idleRpm engine speed meanwhile (1/min)
 */
public record IdlingAtTheEnd(double idlingFraction, double idleRpm) implements Variation {

    @Override
    public Simulation of(Simulation base) {
        return base.in(base.scene()
                .withPhases(base.scene().phases().stream().flatMap(this::split).toList()));
    }

    private Stream<Phase> split(Phase phase) {
        if (phase.mode() != EngineMode.OFF) {
            return Stream.of(phase);
        }
        double offS = (1 - idlingFraction) * phase.durationS();
        return Stream.of(
                phase.lasting(offS),
                new Phase(
                        phase.name() + ", idling",
                        EngineMode.IDLING,
                        phase.durationS() - offS,
                        from(phase.air(), offS),
                        EngineSpeed.constant(idleRpm),
                        phase.stages()));
    }

    private static AirTemperature from(AirTemperature air, double startS) {
        List<AirTemperature.Point> points = new ArrayList<>();
        points.add(new AirTemperature.Point(0, air.atC(startS)));
        air.points().stream()
                .filter(point -> point.timeS() > startS)
                .forEach(point -> points.add(new AirTemperature.Point(point.timeS() - startS, point.airC())));
        return new AirTemperature(points);
    }
}
