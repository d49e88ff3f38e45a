package curbwatt.scenarios.file;

import java.util.List;
import java.util.Optional;

/**
 * What a battery is sized for.
 *
 * @param place where it stands
 * @param capacityHealthPercent capacity in percent of the new battery
 * @param resistanceGrowthFactor resistance over that of the new battery
 * @param batteryC temperature of the batteries at the start (°C)
 * @param oddsPercent share of the draws that must hold (percent)
 * @param draws how many draws
 * @param temperatureSdK standard deviation of the temperature (K)
 * @param capacitySdPercent standard deviation of the capacity (percent of the new battery's)
 * @param loadSdPercent standard deviation of the load currents (percent)
 * @param marginFactor design margin of the paper method
 * @param labels batteries that the fleet can buy
 */
public record SizeEntry(
        Place place,
        Optional<Double> capacityHealthPercent,
        Optional<Double> resistanceGrowthFactor,
        Optional<Double> batteryC,
        Optional<Double> oddsPercent,
        Optional<Integer> draws,
        Optional<Double> temperatureSdK,
        Optional<Double> capacitySdPercent,
        Optional<Double> loadSdPercent,
        Optional<Double> marginFactor,
        List<BatteryEntry> labels) {

    /** Takes a missing list as an empty one. */
    public SizeEntry {
        labels = labels == null ? List.of() : List.copyOf(labels);
    }

    /** Returns the same with other batteries that the fleet can buy. */
    public SizeEntry offering(List<BatteryEntry> others) {
        return new SizeEntry(
                place,
                capacityHealthPercent,
                resistanceGrowthFactor,
                batteryC,
                oddsPercent,
                draws,
                temperatureSdK,
                capacitySdPercent,
                loadSdPercent,
                marginFactor,
                others);
    }
}
