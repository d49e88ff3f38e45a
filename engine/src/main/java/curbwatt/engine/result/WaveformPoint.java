package curbwatt.engine.result;

import java.util.OptionalDouble;

/**
 * A corner of the voltage's shape over a few flash cycles, step by step as it was solved.
 *
 * @param timeS time since the scene's start (s)
 * @param nodeV starter node voltage (V)
 * @param sensedV sensed voltage of the first cutoff, the starter node voltage if there is none (V)
 * @param readingV the same after sensor error and filter (V)
 * @param loadA current of all circuits (A)
 * @param equipmentV equipment node voltage, if there is such a node (V)
 */
public record WaveformPoint(
        double timeS, double nodeV, double sensedV, double readingV, double loadA, OptionalDouble equipmentV) {}
