package curbwatt.charts.wording;

import curbwatt.engine.result.ChargeLedger;
import curbwatt.engine.result.EnergyLedger;
import java.util.List;

/** Where the charge and the energy went, in sentences. */
public final class LedgerText {

    private static final double NOTHING_AH = 5e-4;

    private LedgerText() {}

    /** The charge: who gave, who took, and whether it closes. */
    public static List<String> charge(ChargeLedger charge) {
        double deliveredAh = charge.deliveredAh();
        String battery = deliveredAh >= 0
                ? "the battery " + PlainText.ampereHours(deliveredAh)
                : "the battery took " + PlainText.ampereHours(-deliveredAh) + " of it";
        String given = charge.alternatorAh() > NOTHING_AH
                ? "The alternator gave " + PlainText.ampereHours(charge.alternatorAh()) + ", " + battery
                : deliveredAh >= 0 ? "The battery gave " + PlainText.ampereHours(deliveredAh) : "Nothing was given";
        String inside = "Inside the battery " + PlainText.ampereHours(charge.gassedAh()) + " went into gassing and "
                + PlainText.ampereHours(charge.selfDischargedAh()) + " into self-discharge; its charge "
                + (charge.removedAh() >= 0 ? "fell" : "rose") + " by "
                + PlainText.ampereHours(Math.abs(charge.removedAh())) + ".";
        return List.of(
                given + "; the circuits drew " + PlainText.ampereHours(charge.loadsAh()) + ".",
                inside,
                "What does not close: " + remainder(charge.batteryRemainderAh(), "Ah") + " at the battery, "
                        + remainder(charge.nodeRemainderAh(), "Ah") + " at the node.");
    }

    /** The energy: who gave, who took, and whether it closes. */
    public static List<String> energy(EnergyLedger energy) {
        double releasedWh = energy.releasedWh();
        return List.of(
                "The alternator gave " + PlainText.wattHours(energy.alternatorWh()) + "; the battery's store "
                        + (releasedWh >= 0 ? "gave " : "took ") + PlainText.wattHours(Math.abs(releasedWh)) + ".",
                "The loads used " + PlainText.wattHours(energy.loadsWh()) + "; the feeds turned "
                        + PlainText.wattHours(energy.feedLossWh()) + " into heat, the battery "
                        + PlainText.wattHours(energy.batteryLossWh()) + "; gassing took "
                        + PlainText.wattHours(energy.gassingWh()) + ".",
                "What does not close: " + remainder(energy.remainderWh(), "Wh") + ".");
    }

    private static String remainder(double value, String unit) {
        double size = Math.abs(value);
        return size < 1e-6
                ? "less than a millionth of 1 " + unit
                : PlainText.number(size, size < 0.01 ? 6 : 3) + " " + unit;
    }
}
