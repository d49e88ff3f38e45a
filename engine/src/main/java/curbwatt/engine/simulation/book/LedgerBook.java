package curbwatt.engine.simulation.book;

import curbwatt.engine.result.ChargeLedger;
import curbwatt.engine.result.EnergyLedger;
import curbwatt.engine.simulation.part.OperatingPoint;
import java.util.List;

/** Adds up ampere-hours and watt-hours, step by step, each from its own place so that the balance is a real check. */
final class LedgerBook {

    private static final double SECONDS_PER_HOUR = 3600;

    private final List<BatteryBook> batteries;
    private double alternatorAs;
    private double loadsAs;
    private double starterAs;
    private double starterWs;
    private double linkAs;
    private double alternatorWs;
    private double loadsWs;
    private double feedLossWs;
    private double linkLossWs;

    LedgerBook(List<BatteryBook> batteries) {
        this.batteries = batteries;
    }

    public void add(double lengthS, OperatingPoint start, OperatingPoint end) {
        double half = 0.5 * lengthS;
        alternatorAs += half * (start.starter.sourceA + end.starter.sourceA);
        alternatorWs += half * (start.starter.nodeV * start.starter.sourceA + end.starter.nodeV * end.starter.sourceA);
        starterAs += half * (start.starterA + end.starterA);
        starterWs += half * (start.starter.nodeV * start.starterA + end.starter.nodeV * end.starterA);
        linkAs += half * (start.linkInA - start.linkOutA + end.linkInA - end.linkOutA);
        linkLossWs += half * (start.linkLossW() + end.linkLossW());
        for (int c = 0; c < start.circuitA.length; c++) {
            loadsAs += half * (start.circuitA[c] + end.circuitA[c]);
            loadsWs += half * (start.farV[c] * start.circuitA[c] + end.farV[c] * end.circuitA[c]);
            feedLossWs += half * (start.feedLossW[c] + end.feedLossW[c]);
        }
    }

    public ChargeLedger charge() {
        double removedAh = 0;
        double deliveredAs = 0;
        double gassedAs = 0;
        double selfDischargedAs = 0;
        for (BatteryBook battery : batteries) {
            removedAh += battery.removedAh();
            deliveredAs += battery.deliveredAs();
            gassedAs += battery.gassedAs();
            selfDischargedAs += battery.selfDischargedAs();
        }
        double deliveredAh = deliveredAs / SECONDS_PER_HOUR;
        double gassedAh = gassedAs / SECONDS_PER_HOUR;
        double selfDischargedAh = selfDischargedAs / SECONDS_PER_HOUR;
        double alternatorAh = alternatorAs / SECONDS_PER_HOUR;
        double loadsAh = loadsAs / SECONDS_PER_HOUR;
        double starterAh = starterAs / SECONDS_PER_HOUR;
        double linkAh = linkAs / SECONDS_PER_HOUR;
        return new ChargeLedger(
                removedAh,
                deliveredAh,
                gassedAh,
                selfDischargedAh,
                alternatorAh,
                loadsAh,
                starterAh,
                linkAh,
                removedAh - deliveredAh - gassedAh - selfDischargedAh,
                alternatorAh + deliveredAh - loadsAh - starterAh - linkAh);
    }

    public EnergyLedger energy() {
        double releasedWh = 0;
        double batteryLossWs = 0;
        double gassingWs = 0;
        for (BatteryBook battery : batteries) {
            releasedWh += battery.releasedWh();
            batteryLossWs += battery.lossWs();
            gassingWs += battery.gassingWs();
        }
        double alternatorWh = alternatorWs / SECONDS_PER_HOUR;
        double loadsWh = loadsWs / SECONDS_PER_HOUR;
        double starterWh = starterWs / SECONDS_PER_HOUR;
        double feedLossWh = feedLossWs / SECONDS_PER_HOUR;
        double linkLossWh = linkLossWs / SECONDS_PER_HOUR;
        double batteryLossWh = batteryLossWs / SECONDS_PER_HOUR;
        double gassingWh = gassingWs / SECONDS_PER_HOUR;
        return new EnergyLedger(
                alternatorWh,
                releasedWh,
                loadsWh,
                starterWh,
                feedLossWh,
                linkLossWh,
                batteryLossWh,
                gassingWh,
                alternatorWh + releasedWh - loadsWh - starterWh - feedLossWh - linkLossWh - batteryLossWh - gassingWh);
    }
}
