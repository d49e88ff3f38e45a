package curbwatt.scenarios.file;

import java.util.Optional;

/**
 * A battery: the figures of its label, and its condition.
 *
 * @param place where it stands
 * @param part catalogue part that supplies what is left out
 * @param chemistry how the electrolyte is held
 * @param c20Ah 20 h capacity (Ah)
 * @param reserveMin reserve capacity (min)
 * @param coldCrankingA cold cranking current (A)
 * @param capacityHealthPercent capacity in percent of the new battery
 * @param resistanceGrowthFactor resistance over that of the new battery
 * @param selfDischargePercentPerMonth loss in a month at 25 °C (percent)
 * @param thermalTimeConstantH how slowly it follows the air round it (h)
 */
public record BatteryEntry(
        Place place,
        Optional<String> part,
        Optional<ChemistryWord> chemistry,
        Optional<Double> c20Ah,
        Optional<Double> reserveMin,
        Optional<Double> coldCrankingA,
        Optional<Double> capacityHealthPercent,
        Optional<Double> resistanceGrowthFactor,
        Optional<Double> selfDischargePercentPerMonth,
        Optional<Double> thermalTimeConstantH) {

    /** Returns this entry with the part's figures where it has none of its own. */
    public BatteryEntry over(BatteryEntry other) {
        return new BatteryEntry(
                place,
                part,
                chemistry.or(other::chemistry),
                c20Ah.or(other::c20Ah),
                reserveMin.or(other::reserveMin),
                coldCrankingA.or(other::coldCrankingA),
                capacityHealthPercent.or(other::capacityHealthPercent),
                resistanceGrowthFactor.or(other::resistanceGrowthFactor),
                selfDischargePercentPerMonth.or(other::selfDischargePercentPerMonth),
                thermalTimeConstantH.or(other::thermalTimeConstantH));
    }
}
