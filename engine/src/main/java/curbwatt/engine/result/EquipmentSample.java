package curbwatt.engine.result;

/**
 * The equipment node's part of a line of a trace.
 *
 * @param nodeV node voltage at the instant (V)
 * @param nodeMinV lowest since the line before (V)
 * @param nodeMeanV mean since the line before (V)
 * @param nodeMaxV highest since the line before (V)
 * @param batteryMeanA mean current of the auxiliary battery since the line before, discharging counts positive (A)
 * @param linkMeanA mean current that reached the node through the link since the line before (A)
 * @param stateOfChargeFraction state of charge of the auxiliary battery at the instant
 * @param batteryC its temperature at the instant (°C)
 */
public record EquipmentSample(
        double nodeV,
        double nodeMinV,
        double nodeMeanV,
        double nodeMaxV,
        double batteryMeanA,
        double linkMeanA,
        double stateOfChargeFraction,
        double batteryC) {}
