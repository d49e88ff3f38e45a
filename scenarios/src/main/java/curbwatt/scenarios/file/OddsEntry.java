package curbwatt.scenarios.file;

import java.util.Optional;

/**
 * How uncertain the inputs are, and how many draws are made.
 *
 * @param place where it stands
 * @param runs number of draws
 * @param seed what the random numbers begin with
 * @param sampling how the draws are spread
 * @param indices whether variance shares are asked for
 * @param batteryHealth capacity of the batteries
 * @param temperature temperature of air and batteries
 * @param loadCurrent current of all loads
 * @param alternatorHeat what a hot alternator still delivers
 * @param sensor what every cutoff reads too much
 * @param sceneLength length of the phases at the scene
 */
public record OddsEntry(
        Place place,
        Optional<Integer> runs,
        Optional<Integer> seed,
        Optional<SamplingWord> sampling,
        Optional<Boolean> indices,
        Optional<PercentSpreadEntry> batteryHealth,
        Optional<KelvinSpreadEntry> temperature,
        Optional<PercentSpreadEntry> loadCurrent,
        Optional<PercentSpreadEntry> alternatorHeat,
        Optional<VoltSpreadEntry> sensor,
        Optional<PercentSpreadEntry> sceneLength) {}
