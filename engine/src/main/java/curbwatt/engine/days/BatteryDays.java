package curbwatt.engine.days;

import curbwatt.engine.wear.ChargeThroughput;
import curbwatt.engine.wear.CycleCount;
import curbwatt.engine.wear.LifeEstimate;
import java.util.Objects;
import java.util.Optional;

/**
 * A battery over all the days, or up to the end of the day of the first failed start.
 *
 * @param battery its name
 * @param capacityAh its capacity (Ah)
 * @param startChargeFraction state of charge at the start
 * @param endChargeFraction state of charge at the end
 * @param lowestChargeFraction lowest state of charge
 * @param trend where its charge is going; empty: too few days
 * @param throughput charge taken out and put back
 * @param cycles its cycles
 * @param life life by cycling alone; empty: no published cycle lives for its chemistry
 */
public record BatteryDays(
        String battery,
        double capacityAh,
        double startChargeFraction,
        double endChargeFraction,
        double lowestChargeFraction,
        Optional<Trend> trend,
        ChargeThroughput throughput,
        CycleCount cycles,
        Optional<LifeEstimate> life) {

    /** Refuses missing parts. */
    public BatteryDays {
        Objects.requireNonNull(battery, "battery");
        Objects.requireNonNull(trend, "trend");
        Objects.requireNonNull(throughput, "throughput");
        Objects.requireNonNull(cycles, "cycles");
        Objects.requireNonNull(life, "life");
    }

    /** How many full discharges the charge taken out would make. */
    public double fullDischarges() {
        return throughput.fullDischarges(capacityAh);
    }
}
