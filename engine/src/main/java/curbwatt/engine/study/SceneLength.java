package curbwatt.engine.study;

import curbwatt.engine.scene.Phase;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.simulation.Simulation;
import java.util.Objects;
import java.util.function.Predicate;

/**
 * Some phases last longer, or shorter.
 *
 * @param factor what their length is multiplied by, above 0
 * @param which the phases meant
 */
public record SceneLength(double factor, Predicate<Phase> which) implements Variation {

    /** Refuses missing parts. */
    public SceneLength {
        Objects.requireNonNull(which, "which");
    }

    @Override
    public Simulation of(Simulation base) {
        Scene scene = base.scene();
        return base.in(scene.withPhases(scene.phases().stream()
                .map(phase -> which.test(phase) ? phase.lasting(factor * phase.durationS()) : phase)
                .toList()));
    }
}
