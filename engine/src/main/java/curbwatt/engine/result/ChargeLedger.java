package curbwatt.engine.result;

/**
 * Where the battery's and the vehicle's ampere-hours went over a run.
 *
 * <p>Two balances close: at the battery {@code removedAh = deliveredAh + gassedAh + selfDischargedAh +
 * batteryRemainderAh},
 * at the node {@code alternatorAh + deliveredAh = loadsAh + nodeRemainderAh}. The remainders are what rounding and the
 * solver's tolerance leave over.
 *
 * @param removedAh growth of the net charge removed from the battery, by its state (Ah); negative: it was charged
 * @param deliveredAh current at the terminals, integrated, discharging counts positive (Ah)
 * @param gassedAh charge that went into gassing instead of the main reaction (Ah)
 * @param selfDischargedAh charge lost inside (Ah)
 * @param alternatorAh charge from the alternator (Ah)
 * @param loadsAh charge drawn by the circuits (Ah)
 * @param batteryRemainderAh what does not close at the battery (Ah)
 * @param nodeRemainderAh what does not close at the node (Ah)
 */
public record ChargeLedger(
        double removedAh,
        double deliveredAh,
        double gassedAh,
        double selfDischargedAh,
        double alternatorAh,
        double loadsAh,
        double batteryRemainderAh,
        double nodeRemainderAh) {}
