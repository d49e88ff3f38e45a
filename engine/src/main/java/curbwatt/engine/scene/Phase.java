package curbwatt.engine.scene;

import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.powertrain.EngineSpeed;
import curbwatt.engine.quantity.Require;
import java.util.Objects;
import java.util.Set;

/**
 * A stretch of the scene in which the same stages are on and the engine does the same thing.
 *
 * @param name unique within the scene
 * @param mode what the engine does
 * @param durationS length (s), 1 … one year
 * @param air temperature of the air round battery and regulator
 * @param speed engine speed; looked at only while the engine runs
 * @param stages response stages that are on
 */
public record Phase(
        String name, EngineMode mode, double durationS, AirTemperature air, EngineSpeed speed, Set<String> stages) {

    /** Refuses figures out of range. */
    public Phase {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(mode, "mode");
        Require.inside("durationS", durationS, 1, 366 * 86400.0, "s");
        Objects.requireNonNull(air, "air");
        Objects.requireNonNull(speed, "speed");
        stages = Set.copyOf(stages);
    }

    /** A phase at one air temperature (°C), −50 … 110. */
    public Phase(String name, EngineMode mode, double durationS, double airC, EngineSpeed speed, Set<String> stages) {
        this(name, mode, durationS, AirTemperature.constant(airC), speed, stages);
    }

    /** Air temperature at the phase's start (°C). */
    public double airC() {
        return air.atC(0);
    }

    /** The same phase by another name. */
    public Phase named(String other) {
        return new Phase(other, mode, durationS, air, speed, stages);
    }

    /** The same phase of another length (s). */
    public Phase lasting(double otherS) {
        return new Phase(name, mode, otherS, air, speed, stages);
    }

    /** The same phase in other air. */
    public Phase in(AirTemperature other) {
        return new Phase(name, mode, durationS, other, speed, stages);
    }
}
