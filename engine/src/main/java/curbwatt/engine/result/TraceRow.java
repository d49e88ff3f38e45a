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
 * @param sensedV sensed voltage of the first cutoff at the instant, the starter node voltage if there is no cutoff (V)
 * @param sensedMinV lowest sensed voltage since the line before (V)
 * @param sensedMaxV highest sensed voltage since the line before (V)
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
        double sensedV,
        double sensedMinV,
        double sensedMaxV,
        double batteryMeanA,
        double alternatorMeanA,
        List<Double> circuitMeanA,
        double stateOfChargeFraction,
        double batteryC,
        Optional<EquipmentSample> equipment) {}
