package curbwatt.engine.wear;

import curbwatt.engine.quantity.Require;

/**
 * How long a battery would last if it were cycled on as it was in a record, by cycling alone.
 *
 * @param wornFraction share of life that the record used up
 * @param lowDays life with the published counts divided by their spread (days)
 * @param middleDays life by the published counts (days)
 * @param highDays life with the published counts multiplied by their spread (days); positive infinity: no wear at all
 */
public record LifeEstimate(double wornFraction, double lowDays, double middleDays, double highDays) {

    /**
     * An estimate from a record.
     *
     * @param count cycles in the record
     * @param life published cycle counts
     * @param recordDays length of the record (days), above 0
     */
    public static LifeEstimate of(CycleCount count, CycleLife life, double recordDays) {
        double worn = life.wornFraction(count);
        double middleDays = Require.positive("recordDays", recordDays, "days") / worn;
        return new LifeEstimate(worn, middleDays / life.spreadFactor(), middleDays, middleDays * life.spreadFactor());
    }
}
