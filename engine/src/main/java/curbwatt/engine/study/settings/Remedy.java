package curbwatt.engine.study.settings;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The least change of one kind that makes some setting work.
 *
 * @param kind what is changed
 * @param amount how much, in {@code unit}; empty: no amount that was tried is enough
 * @param unit {@code ×} for a factor, {@code 1/min} for a speed
 * @param most the largest amount tried, in {@code unit}
 * @param setting a setting that then works
 */
public record Remedy(Kind kind, OptionalDouble amount, String unit, double most, Optional<TripSetting> setting) {

    /** What can be changed. */
    public enum Kind {
        /** Batteries of so many times the capacity, with so much less resistance. */
        MORE_CAPACITY,
        /** Loads that draw so much less. */
        LESS_LOAD,
        /** An idle control that holds the engine at so many revolutions while it idles. */
        FASTER_IDLE,
        /** An engine that idles for so large a share of each phase, at its end, instead of being off. */
        IDLING_INSTEAD_OF_OFF
    }

    /** Refuses missing parts. */
    public Remedy {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(amount, "amount");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(setting, "setting");
    }
}
