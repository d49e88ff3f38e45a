package curbwatt.engine.result;

/**
 * Where the energy came from and went over a run: {@code alternatorWh + releasedWh = loadsWh + starterWh + feedLossWh +
 * linkLossWh + batteryLossWh + gassingWh + remainderWh}.
 *
 * @param alternatorWh electrical energy from the alternator (Wh)
 * @param releasedWh fall of the batteries' stored energy, taken at rest voltage and 25 °C (Wh); negative: they were
 *     charged
 * @param loadsWh energy drawn at the loads' own terminals (Wh)
 * @param starterWh energy drawn by the starter (Wh)
 * @param feedLossWh heat in the feeds (Wh)
 * @param linkLossWh heat in the link between the batteries (Wh)
 * @param batteryLossWh heat in the batteries: resistance, activation, concentration, self-discharge (Wh)
 * @param gassingWh energy that went into gassing (Wh)
 * @param remainderWh what does not close (Wh)
 */
public record EnergyLedger(
        double alternatorWh,
        double releasedWh,
        double loadsWh,
        double starterWh,
        double feedLossWh,
        double linkLossWh,
        double batteryLossWh,
        double gassingWh,
        double remainderWh) {}
