package curbwatt.scenarios.file;

import java.util.List;
import java.util.Optional;

/**
 * A stretch of the scene.
 *
 * @param place where it stands
 * @param name as the user calls it
 * @param engine what the engine does
 * @param durationMin length (min)
 * @param airC temperature of the air round the battery (°C)
 * @param airProfile air temperature that changes
 * @param underHoodC temperature of the air under the hood (°C)
 * @param underHoodProfile air under the hood that changes
 * @param engineRpm engine speed (1/min)
 * @param speedProfile engine speed that changes
 * @param stages response stages that are on
 */
public record PhaseEntry(
        Place place,
        Optional<String> name,
        Optional<EngineWord> engine,
        Optional<Double> durationMin,
        Optional<Double> airC,
        List<AirEntry> airProfile,
        Optional<Double> underHoodC,
        List<AirEntry> underHoodProfile,
        Optional<Double> engineRpm,
        List<SpeedEntry> speedProfile,
        List<String> stages) {

    /** Takes missing lists as empty ones. */
    public PhaseEntry {
        airProfile = airProfile == null ? List.of() : List.copyOf(airProfile);
        underHoodProfile = underHoodProfile == null ? List.of() : List.copyOf(underHoodProfile);
        speedProfile = speedProfile == null ? List.of() : List.copyOf(speedProfile);
        stages = stages == null ? List.of() : List.copyOf(stages);
    }

    /** Whether it says how warm the air under the hood is. */
    public boolean saysUnderHood() {
        return underHoodC.isPresent() || !underHoodProfile.isEmpty();
    }
}
