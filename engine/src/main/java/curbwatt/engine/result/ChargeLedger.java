package curbwatt.engine.result;

/**
 * Where the ampere-hours of batteries and vehicle went over a run.
 *
 * <p>Two balances close: at the batteries {@code removedAh = deliveredAh + gassedAh + selfDischargedAh +
 * batteryRemainderAh}, at the nodes {@code alternatorAh + deliveredAh = loadsAh + starterAh + linkAh +
 * nodeRemainderAh}. The remainders
 * are what rounding and the solver's tolerance leave over.
 *
 * @param removedAh growth of the net charge removed from the batteries, by their state (Ah); negative: they were
 *     charged
 * @param deliveredAh current at their terminals, integrated, discharging counts positive (Ah)
 * @param gassedAh charge that went into gassing instead of the main reaction (Ah)
 * @param selfDischargedAh charge lost inside (Ah)
 * @param alternatorAh charge from the alternator (Ah)
 * @param loadsAh charge drawn by the circuits (Ah)
 * @param starterAh charge drawn by the starter (Ah)
 * @param linkAh charge that went into the link less what came out of it (Ah): not zero for a charger, whose voltages
 *     differ
 * @param batteryRemainderAh what does not close at the batteries (Ah)
 * @param nodeRemainderAh what does not close at the nodes (Ah)
 */
public record ChargeLedger(
        double removedAh,
        double deliveredAh,
        double gassedAh,
        double selfDischargedAh,
        double alternatorAh,
        double loadsAh,
        double starterAh,
        double linkAh,
        double batteryRemainderAh,
        double nodeRemainderAh) {}
