package curbwatt.engine.result;

import java.util.List;
import java.util.Optional;

/**
 * One line of a trace: figures at an instant, and what happened since the line before.
 *
 * @param timeS time since the scene's start (s)
 * @param nodeV starter node voltage at the instant (V)
 * @param nodeMinV lowest starter node voltage since the line before (V)
 * @param nodeMeanV mean starter node voltage since the line before (V)
 * @param nodeMaxV highest starter node voltage since the line before (V)
 * @param sensed what each cutoff senses, in the vehicle's order; empty if there is none
 * @param batteryMeanA mean battery current since the line before, discharging counts positive (A)
 * @param alternatorMeanA mean alternator current since the line before (A)
 * @param circuitMeanA mean current of each circuit since the line before, in the vehicle's order (A)
 * @param stateOfChargeFraction state of charge at the instant
 * @param batteryC battery temperature at the instant (°C)
 * @param equipment the equipment node, if there is one
 */
public record TraceRow(
        double timeS,
        double nodeV,
        double nodeMinV,
        double nodeMeanV,
        double nodeMaxV,
        List<SensedSample> sensed,
        double batteryMeanA,
        double alternatorMeanA,
        List<Double> circuitMeanA,
        double stateOfChargeFraction,
        double batteryC,
        Optional<EquipmentSample> equipment) {

    /** Sensed voltage of the first cutoff at the instant, the starter node voltage if there is no cutoff (V). */
    public double sensedV() {
        return sensed.isEmpty() ? nodeV : sensed.get(0).voltageV();
    }

    /** Lowest such voltage since the line before (V). */
    public double sensedMinV() {
        return sensed.isEmpty() ? nodeMinV : sensed.get(0).lowestV();
    }

    /** Highest such voltage since the line before (V). */
    public double sensedMaxV() {
        return sensed.isEmpty() ? nodeMaxV : sensed.get(0).highestV();
    }
}
