package curbwatt.engine.result;

import java.util.OptionalDouble;

/**
 * A phase in figures.
 *
 * @param phase its name
 * @param startS its start, since the scene's start (s)
 * @param durationS its length (s)
 * @param engineRan whether the engine ran in it; false also where it should have but did not start
 * @param meanLoadA mean current of all circuits (A)
 * @param meanAlternatorA mean alternator current (A)
 * @param meanBatteryA mean battery current, discharging counts positive (A)
 * @param lowestV lowest node voltage (V)
 * @param highestV highest node voltage (V)
 * @param startChargeFraction state of charge at its start
 * @param endChargeFraction state of charge at its end
 * @param alternatorCapacityA hot alternator output at the phase's lowest engine speed and hottest air under the hood
 *     (A); empty: engine not running
 */
public record PhaseSummary(
        String phase,
        double startS,
        double durationS,
        boolean engineRan,
        double meanLoadA,
        double meanAlternatorA,
        double meanBatteryA,
        double lowestV,
        double highestV,
        double startChargeFraction,
        double endChargeFraction,
        OptionalDouble alternatorCapacityA) {}
