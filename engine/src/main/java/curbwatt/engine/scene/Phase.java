package curbwatt.engine.scene;

import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.powertrain.EngineSpeed;
import curbwatt.engine.powertrain.UnderHood;
import curbwatt.engine.quantity.Require;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * A stretch of the scene in which the same stages are on and the engine does the same thing.
 *
 * @param name unique within the scene
 * @param mode what the engine does
 * @param durationS length (s), 1 … one year
 * @param air temperature of the air round battery and regulator
 * @param underHood temperature of the air under the hood, if it is given for this phase
 * @param speed engine speed; looked at only while the engine runs
 * @param stages response stages that are on
 */
public record Phase(
        String name,
        EngineMode mode,
        double durationS,
        AirTemperature air,
        Optional<AirTemperature> underHood,
        EngineSpeed speed,
        Set<String> stages) {

    /** Refuses figures out of range. */
    public Phase {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(mode, "mode");
        Require.inside("durationS", durationS, 1, 366 * 86400.0, "s");
        Objects.requireNonNull(air, "air");
        Objects.requireNonNull(underHood, "underHood");
        Objects.requireNonNull(speed, "speed");
        stages = Set.copyOf(stages);
    }

    /** A phase of which nothing is said about the air under the hood. */
    public Phase(
            String name, EngineMode mode, double durationS, AirTemperature air, EngineSpeed speed, Set<String> stages) {
        this(name, mode, durationS, air, Optional.empty(), speed, stages);
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
        return new Phase(other, mode, durationS, air, underHood, speed, stages);
    }

    /** The same phase of another length (s). */
    public Phase lasting(double otherS) {
        return new Phase(name, mode, otherS, air, underHood, speed, stages);
    }

    /** The same phase with its own temperature under the hood. */
    public Phase underHood(AirTemperature own) {
        return new Phase(name, mode, durationS, air, Optional.of(own), speed, stages);
    }

    /**
     * Hottest air under the hood (°C): the phase's own, or the air outside with the whole rise of a vehicle; empty:
     * nobody says.
     */
    public OptionalDouble hottestUnderHoodC(Optional<UnderHood> vehicle) {
        if (underHood.isPresent()) {
            return OptionalDouble.of(underHood.get().highestC());
        }
        return vehicle.isPresent()
                ? OptionalDouble.of(air.highestC() + vehicle.get().settledRiseK())
                : OptionalDouble.empty();
    }

    /** The same phase warmer by so much (K), outside and, where it says that, under the hood. */
    public Phase warmerBy(double shiftK) {
        return new Phase(
                name,
                mode,
                durationS,
                air.warmerBy(shiftK),
                underHood.map(hood -> hood.warmerBy(shiftK)),
                speed,
                stages);
    }

    /** The same phase in other air. */
    public Phase in(AirTemperature other) {
        return new Phase(name, mode, durationS, other, underHood, speed, stages);
    }
}
