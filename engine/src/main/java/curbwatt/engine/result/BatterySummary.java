package curbwatt.engine.result;

/**
 * What a battery lived through.
 *
 * @param battery its name
 * @param startChargeFraction state of charge at the start
 * @param endChargeFraction state of charge at the end
 * @param lowestChargeFraction lowest state of charge
 * @param dischargedAh charge drawn at its terminals while it discharged (Ah)
 * @param chargedAh charge given at its terminals while it was charged (Ah)
 * @param lowestV lowest voltage of its node (V)
 * @param smallestFreezingMarginK least distance of its temperature above its electrolyte's freezing point (K);
 *     infinite for a battery that has no acid
 */
public record BatterySummary(
        String battery,
        double startChargeFraction,
        double endChargeFraction,
        double lowestChargeFraction,
        double dischargedAh,
        double chargedAh,
        double lowestV,
        double smallestFreezingMarginK) {}
