package curbwatt.scenarios.file;

import java.util.List;
import java.util.Optional;

/**
 * How the settings of a cutoff are searched.
 *
 * @param place where it stands
 * @param cutoff name of the cutoff
 * @param tripLevelsV trip levels to try (V)
 * @param tripDelaysS delays to try (s)
 * @param recloses rules of closing to try
 * @param sensorSpreadV error of the reading (V)
 * @param timerSpreadPercent error of the delay (percent)
 * @param capacityLossPercent capacity lost with age (percent)
 * @param resistanceGrowthPercent growth of the resistance meanwhile (percent)
 * @param airSpreadC how much colder or warmer it may be (°C)
 * @param loadSpreadPercent how much more or less the loads may draw (percent)
 */
public record SettingsEntry(
        Place place,
        Optional<String> cutoff,
        List<Double> tripLevelsV,
        List<Double> tripDelaysS,
        List<RecloseEntry> recloses,
        Optional<Double> sensorSpreadV,
        Optional<Double> timerSpreadPercent,
        Optional<Double> capacityLossPercent,
        Optional<Double> resistanceGrowthPercent,
        Optional<Double> airSpreadC,
        Optional<Double> loadSpreadPercent) {

    /** Takes missing lists as empty ones. */
    public SettingsEntry {
        tripLevelsV = tripLevelsV == null ? List.of() : List.copyOf(tripLevelsV);
        tripDelaysS = tripDelaysS == null ? List.of() : List.copyOf(tripDelaysS);
        recloses = recloses == null ? List.of() : List.copyOf(recloses);
    }
}
