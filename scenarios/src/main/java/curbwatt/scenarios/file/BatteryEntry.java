package curbwatt.scenarios.file;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * A battery: the figures of its label, and its condition.
 *
 * @param place where it stands
 * @param part catalogue part that supplies what is left out
 * @param chemistry how it works
 * @param c20Ah 20 h capacity (Ah)
 * @param reserveMin reserve capacity (min)
 * @param coldCrankingA cold cranking current (A)
 * @param capacityAh capacity of an iron-phosphate pack (Ah)
 * @param resistanceMilliohm its resistance (mΩ)
 * @param continuousA discharging current that the pack is rated for (A)
 * @param capacityHealthPercent capacity in percent of the new battery
 * @param resistanceGrowthFactor resistance over that of the new battery
 * @param selfDischargePercentPerMonth loss in a month at 25 °C (percent)
 * @param thermalTimeConstantH how slowly it follows the air round it (h)
 * @param inEngineSpace whether that air is the air under the hood
 */
public record BatteryEntry(
        Place place,
        Optional<String> part,
        Optional<ChemistryWord> chemistry,
        Optional<Double> c20Ah,
        Optional<Double> reserveMin,
        Optional<Double> coldCrankingA,
        Optional<Double> capacityAh,
        Optional<Double> resistanceMilliohm,
        Optional<Double> continuousA,
        Optional<Double> capacityHealthPercent,
        Optional<Double> resistanceGrowthFactor,
        Optional<Double> selfDischargePercentPerMonth,
        Optional<Double> thermalTimeConstantH,
        Optional<Boolean> inEngineSpace) {

    /** Returns this entry with the part's figures where it has none of its own. */
    public BatteryEntry over(BatteryEntry other) {
        return new BatteryEntry(
                place,
                part,
                chemistry.or(other::chemistry),
                c20Ah.or(other::c20Ah),
                reserveMin.or(other::reserveMin),
                coldCrankingA.or(other::coldCrankingA),
                capacityAh.or(other::capacityAh),
                resistanceMilliohm.or(other::resistanceMilliohm),
                continuousA.or(other::continuousA),
                capacityHealthPercent.or(other::capacityHealthPercent),
                resistanceGrowthFactor.or(other::resistanceGrowthFactor),
                selfDischargePercentPerMonth.or(other::selfDischargePercentPerMonth),
                thermalTimeConstantH.or(other::thermalTimeConstantH),
                inEngineSpace.or(other::inEngineSpace));
    }

    /** Returns the figures of the label by their keys, whatever the chemistry. */
    public Map<String, Optional<Double>> label() {
        Map<String, Optional<Double>> label = new LinkedHashMap<>();
        label.put("c20Ah", c20Ah);
        label.put("reserveMin", reserveMin);
        label.put("coldCrankingA", coldCrankingA);
        label.put("capacityAh", capacityAh);
        label.put("resistanceMilliohm", resistanceMilliohm);
        label.put("continuousA", continuousA);
        return label;
    }
}
