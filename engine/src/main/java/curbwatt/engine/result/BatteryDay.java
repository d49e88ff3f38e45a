package curbwatt.engine.result;

/**
 * A battery's day.
 *
 * @param lowestChargeFraction lowest state of charge
 * @param endChargeFraction state of charge at the day's end
 * @param dischargedAh charge drawn at its terminals while it discharged (Ah)
 * @param chargedAh charge given at its terminals while it was charged (Ah)
 */
public record BatteryDay(
        double lowestChargeFraction, double endChargeFraction, double dischargedAh, double chargedAh) {}
