package curbwatt.charts.wording;

import curbwatt.engine.result.ChargeLedger;
import curbwatt.engine.result.EnergyLedger;
import curbwatt.engine.result.LinkSummary;
import curbwatt.engine.result.RunResult;
import java.util.ArrayList;
import java.util.List;

/** Where the charge and the energy went, in sentences. */
public final class LedgerText {

    private static final double NOTHING_AH = 5e-4;
    private static final double NOTHING_WH = 5e-3;

    private LedgerText() {}

    /** The charge: who gave, who took, and whether it closes. */
    public static List<String> charge(RunResult result) {
        ChargeLedger charge = result.charge();
        boolean pair = result.batteries().size() > 1;
        String name = pair ? "batteries" : "battery";
        double deliveredAh = charge.deliveredAh();
        String battery = deliveredAh >= 0
                ? "the " + name + " " + PlainText.ampereHours(deliveredAh)
                : "the " + name + " took " + PlainText.ampereHours(-deliveredAh) + " of it";
        String given = charge.alternatorAh() > NOTHING_AH
                ? "The alternator gave " + PlainText.ampereHours(charge.alternatorAh()) + ", " + battery
                : deliveredAh >= 0
                        ? "The " + name + " gave " + PlainText.ampereHours(deliveredAh)
                        : "Nothing was given";
        String inside =
                "Inside the " + name + " " + PlainText.ampereHours(charge.gassedAh()) + " went into gassing and "
                        + PlainText.ampereHours(charge.selfDischargedAh()) + " into self-discharge; "
                        + (pair ? "their" : "its") + " charge "
                        + (charge.removedAh() >= 0 ? "fell" : "rose") + " by "
                        + PlainText.ampereHours(Math.abs(charge.removedAh())) + ".";
        List<String> sentences = new ArrayList<>();
        sentences.add(given + "; the circuits drew " + PlainText.ampereHours(charge.loadsAh())
                + (charge.starterAh() > NOTHING_AH ? ", the starter " + PlainText.ampereHours(charge.starterAh()) : "")
                + ".");
        result.link().ifPresent(link -> sentences.add(link(link, charge)));
        sentences.add(inside);
        sentences.add("What does not close: " + remainder(charge.batteryRemainderAh(), "Ah") + " at the " + name + ", "
                + remainder(charge.nodeRemainderAh(), "Ah") + (pair ? " at the nodes." : " at the node."));
        return List.copyOf(sentences);
    }

    /** The energy: who gave, who took, and whether it closes. */
    public static List<String> energy(RunResult result) {
        EnergyLedger energy = result.energy();
        boolean pair = result.batteries().size() > 1;
        double releasedWh = energy.releasedWh();
        return List.of(
                "The alternator gave " + PlainText.wattHours(energy.alternatorWh()) + "; "
                        + (pair ? "the batteries' store " : "the battery's store ")
                        + (releasedWh >= 0 ? "gave " : "took ") + PlainText.wattHours(Math.abs(releasedWh)) + ".",
                "The loads used " + PlainText.wattHours(energy.loadsWh())
                        + (energy.starterWh() > NOTHING_WH
                                ? ", the starter " + PlainText.wattHours(energy.starterWh())
                                : "")
                        + "; the feeds turned "
                        + PlainText.wattHours(energy.feedLossWh()) + " into heat, "
                        + (pair
                                ? "the link " + PlainText.wattHours(energy.linkLossWh()) + ", the batteries "
                                : "the battery ")
                        + PlainText.wattHours(energy.batteryLossWh()) + "; gassing took "
                        + PlainText.wattHours(energy.gassingWh()) + ".",
                "What does not close: " + remainder(energy.remainderWh(), "Wh") + ".");
    }

    private static String link(LinkSummary link, ChargeLedger charge) {
        String passed = PlainText.quoted(link.link()) + " gave " + PlainText.ampereHours(link.toEquipmentAh())
                + " to the equipment node and " + PlainText.ampereHours(link.toStarterAh()) + " back";
        return Math.abs(charge.linkAh()) < NOTHING_AH
                ? passed + "."
                : passed + "; it took " + PlainText.ampereHours(Math.abs(charge.linkAh()))
                        + (charge.linkAh() > 0 ? " more" : " less") + " than it gave, because the voltages differ.";
    }

    private static String remainder(double value, String unit) {
        double size = Math.abs(value);
        return size < 1e-6
                ? "less than a millionth of 1 " + unit
                : PlainText.number(size, size < 0.01 ? 6 : 3) + " " + unit;
    }
}
