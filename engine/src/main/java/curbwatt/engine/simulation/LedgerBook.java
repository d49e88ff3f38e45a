package curbwatt.engine.simulation;

import curbwatt.engine.battery.Terminal;
import curbwatt.engine.result.ChargeLedger;
import curbwatt.engine.result.EnergyLedger;

/** Adds up ampere-hours and watt-hours, step by step, each from its own place so that the balance is a real check. */
final class LedgerBook {

    private static final double SECONDS_PER_HOUR = 3600;
    private static final double REFERENCE_C = 25;

    private final BatteryWork battery;
    private final Terminal reference;
    private final double startRemovedAh;
    private final double startStoredWh;
    private double deliveredAs;
    private double gassedAs;
    private double selfDischargedAs;
    private double alternatorAs;
    private double loadsAs;
    private double alternatorWs;
    private double loadsWs;
    private double feedLossWs;
    private double batteryLossWs;
    private double gassingWs;

    LedgerBook(BatteryWork battery) {
        this.battery = battery;
        reference = battery.battery.at(REFERENCE_C);
        startRemovedAh = battery.removedAh();
        startStoredWh = storedWh();
    }

    /** Adds a step; charge fractions are the battery's at its ends. */
    void add(double lengthS, OperatingPoint start, OperatingPoint end, double startCharge, double endCharge) {
        double half = 0.5 * lengthS;
        deliveredAs += half * (start.batteryA() + end.batteryA());
        gassedAs += half * (start.gasA + end.gasA);
        selfDischargedAs += lengthS * battery.selfDischargeA();
        alternatorAs += half * (start.alternatorA + end.alternatorA);
        alternatorWs += half * (start.nodeV * start.alternatorA + end.nodeV * end.alternatorA);
        gassingWs += half * (start.nodeV * start.gasA + end.nodeV * end.gasA);
        for (int c = 0; c < start.circuitA.length; c++) {
            loadsAs += half * (start.circuitA[c] + end.circuitA[c]);
            loadsWs += half * (start.farV[c] * start.circuitA[c] + end.farV[c] * end.circuitA[c]);
            feedLossWs += half * (start.feedLossW[c] + end.feedLossW[c]);
        }
        double startRestV = restV(startCharge);
        double endRestV = restV(endCharge);
        batteryLossWs += half
                * ((startRestV - start.nodeV) * start.mainA
                        + (endRestV - end.nodeV) * end.mainA
                        + battery.selfDischargeA() * (startRestV + endRestV));
    }

    ChargeLedger charge() {
        double removedAh = battery.removedAh() - startRemovedAh;
        double deliveredAh = deliveredAs / SECONDS_PER_HOUR;
        double gassedAh = gassedAs / SECONDS_PER_HOUR;
        double selfDischargedAh = selfDischargedAs / SECONDS_PER_HOUR;
        double alternatorAh = alternatorAs / SECONDS_PER_HOUR;
        double loadsAh = loadsAs / SECONDS_PER_HOUR;
        return new ChargeLedger(
                removedAh,
                deliveredAh,
                gassedAh,
                selfDischargedAh,
                alternatorAh,
                loadsAh,
                removedAh - deliveredAh - gassedAh - selfDischargedAh,
                alternatorAh + deliveredAh - loadsAh);
    }

    EnergyLedger energy() {
        double alternatorWh = alternatorWs / SECONDS_PER_HOUR;
        double releasedWh = startStoredWh - storedWh();
        double loadsWh = loadsWs / SECONDS_PER_HOUR;
        double feedLossWh = feedLossWs / SECONDS_PER_HOUR;
        double batteryLossWh = batteryLossWs / SECONDS_PER_HOUR;
        double gassingWh = gassingWs / SECONDS_PER_HOUR;
        return new EnergyLedger(
                alternatorWh,
                releasedWh,
                loadsWh,
                feedLossWh,
                batteryLossWh,
                gassingWh,
                alternatorWh + releasedWh - loadsWh - feedLossWh - batteryLossWh - gassingWh);
    }

    /** Stored energy above empty at rest voltage and 25 °C; the rest voltage is straight in the charge (Wh). */
    private double storedWh() {
        double charge = battery.stateOfChargeFraction();
        return battery.battery.capacityAh() * charge * 0.5 * (restV(0) + restV(charge));
    }

    private double restV(double charge) {
        return reference.restVoltageV(charge);
    }
}
