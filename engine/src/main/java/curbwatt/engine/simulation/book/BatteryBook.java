package curbwatt.engine.simulation.book;

import curbwatt.engine.battery.Chemistry;
import curbwatt.engine.battery.ElectrolyteFreezing;
import curbwatt.engine.battery.Terminal;
import curbwatt.engine.result.BatterySummary;
import curbwatt.engine.simulation.part.BatteryWork;
import curbwatt.engine.simulation.part.NodePoint;
import curbwatt.engine.simulation.part.Parabola;

/** Adds up one battery. */
final class BatteryBook {

    private static final double SECONDS_PER_HOUR = 3600;
    private static final double REFERENCE_C = 25;

    private final String name;
    private final BatteryWork battery;
    private final Terminal reference;
    private final ElectrolyteFreezing freezing = new ElectrolyteFreezing();
    private final double startRemovedAh;
    private final double startStoredWh;
    private final double startCharge;
    private double stepStartCharge;
    private double lowestCharge;
    private double lowestV = Double.POSITIVE_INFINITY;
    private double dischargedAs;
    private double chargedAs;
    private double gassedAs;
    private double selfDischargedAs;
    private double lossWs;
    private double gassingWs;
    private double freezingMarginK = Double.POSITIVE_INFINITY;
    private double stageRestV;

    BatteryBook(String name, BatteryWork battery) {
        this.name = name;
        this.battery = battery;
        reference = battery.battery.at(REFERENCE_C);
        startRemovedAh = battery.removedAh();
        startStoredWh = storedWh();
        startCharge = battery.stateOfChargeFraction();
        stepStartCharge = startCharge;
        lowestCharge = startCharge;
    }

    /** Adds a step that ends in the battery's present state. */
    void add(double lengthS, NodePoint start, NodePoint end) {
        double half = 0.5 * lengthS;
        double endCharge = battery.stateOfChargeFraction();
        add(half, start, reference.restVoltageV(stepStartCharge));
        add(half, end, reference.restVoltageV(endCharge));
        double deliveredAs = half * (start.batteryA() + end.batteryA());
        pass(deliveredAs);
        moved(endCharge);
    }

    /** Turns to an instant of a long step, at which the battery had a charge. */
    void turnTo(double charge) {
        stageRestV = reference.restVoltageV(charge);
    }

    /** Adds so much time at that instant. */
    void addShare(double weightS, NodePoint point) {
        add(weightS, point, stageRestV);
        pass(weightS * point.batteryA());
    }

    private void pass(double deliveredAs) {
        if (deliveredAs > 0) {
            dischargedAs += deliveredAs;
        } else {
            chargedAs -= deliveredAs;
        }
    }

    private void add(double weightS, NodePoint point, double restV) {
        gassedAs += weightS * point.gasA;
        selfDischargedAs += weightS * battery.selfDischargeA();
        gassingWs += weightS * point.nodeV * point.gasA;
        lossWs += weightS * ((restV - point.nodeV) * point.mainA + battery.selfDischargeA() * restV);
    }

    /** Whether an instant on the parabola through three might be one to note. */
    boolean mayNote(NodePoint start, NodePoint middle, NodePoint end) {
        return Parabola.floor(start.nodeV, middle.nodeV, end.nodeV) < lowestV;
    }

    /** Notes an instant. */
    void note(NodePoint point) {
        lowestV = Math.min(lowestV, point.nodeV);
    }

    /** Notes the charge at a step's end. */
    void moved(double endCharge) {
        stepStartCharge = endCharge;
        lowestCharge = Math.min(lowestCharge, endCharge);
    }

    /** Notes how far the battery is from freezing. */
    public void noteCold() {
        if (battery.battery.parameters().chemistry() == Chemistry.LFP) {
            return;
        }
        freezingMarginK =
                Math.min(freezingMarginK, battery.temperatureC() - freezing.freezingC(battery.stateOfChargeFraction()));
    }

    public BatterySummary summary() {
        return new BatterySummary(
                name,
                startCharge,
                battery.stateOfChargeFraction(),
                lowestCharge,
                dischargedAs / SECONDS_PER_HOUR,
                chargedAs / SECONDS_PER_HOUR,
                lowestV,
                freezingMarginK);
    }

    public double removedAh() {
        return battery.removedAh() - startRemovedAh;
    }

    double deliveredAs() {
        return dischargedAs - chargedAs;
    }

    double gassedAs() {
        return gassedAs;
    }

    double selfDischargedAs() {
        return selfDischargedAs;
    }

    public double releasedWh() {
        return startStoredWh - storedWh();
    }

    double lossWs() {
        return lossWs;
    }

    double gassingWs() {
        return gassingWs;
    }

    private double storedWh() {
        return reference.storedWh(battery.stateOfChargeFraction());
    }
}
