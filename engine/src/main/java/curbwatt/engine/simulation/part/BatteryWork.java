package curbwatt.engine.simulation.part;

import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.BatteryState;
import curbwatt.engine.battery.DiffusionModes;
import curbwatt.engine.battery.Terminal;
import curbwatt.engine.scene.InitialState;
import curbwatt.engine.vehicle.BatteryInstallation;

/** The battery between steps: charge removed, bound charge of each mode, temperature. */
public final class BatteryWork {

    private static final double SECONDS_PER_HOUR = 3600;

    /**
     * Change of temperature after which the terminal's constants are taken anew (K): under 0.0005 % of the resistance. Ten times
     * as much moves a voltage by some 3 µV at once, as far as a step near a level may be off in all.
     */
    private static final double TEMPERATURE_GRAIN_K = 0.0001;

    /** A state nearer to full than this takes less than a milliampere: it counts as full. */
    private static final double FULL_SURFACE = 1 - 1e-6;

    public final Battery battery;
    private final DiffusionModes modes;
    private final double thermalTimeConstantS;
    private final boolean inEngineSpace;
    private double removedAh;
    private final double[] boundAh;
    private double temperatureC;
    private final Terminal terminal;
    private double selfDischargeA;
    private boolean mayCharge = true;
    private boolean mayDischarge = true;

    public BatteryWork(BatteryInstallation installation, InitialState start) {
        battery = installation.battery();
        modes = battery.modes();
        thermalTimeConstantS = installation.thermalTimeConstantS();
        inEngineSpace = installation.inEngineSpace();
        BatteryState state = BatteryState.atStateOfCharge(start.stateOfChargeFraction(), battery);
        removedAh = state.removedAh();
        boundAh = state.boundAh().stream().mapToDouble(Double::doubleValue).toArray();
        temperatureC = start.batteryC();
        terminal = battery.at(temperatureC);
        selfDischargeA = battery.selfDischargeA(temperatureC);
    }

    private BatteryWork(BatteryWork other) {
        battery = other.battery;
        modes = other.modes;
        thermalTimeConstantS = other.thermalTimeConstantS;
        inEngineSpace = other.inEngineSpace;
        boundAh = other.boundAh.clone();
        terminal = battery.at(other.temperatureC);
        takeFrom(other);
    }

    /** A copy to try things on. */
    public BatteryWork copy() {
        return new BatteryWork(this);
    }

    /** Becomes as another one of the same battery. */
    public void takeFrom(BatteryWork other) {
        removedAh = other.removedAh;
        System.arraycopy(other.boundAh, 0, boundAh, 0, boundAh.length);
        temperatureC = other.temperatureC;
        terminal.warmTo(other.terminal);
        selfDischargeA = other.selfDischargeA;
        mayCharge = other.mayCharge;
        mayDischarge = other.mayDischarge;
    }

    /** Lets a constant current of the main reaction flow for a time. */
    public void advance(double mainA, double durationS) {
        removedAh += (mainA + selfDischargeA) * durationS / SECONDS_PER_HOUR;
        modes.advance(boundAh, mainA, durationS);
    }

    /**
     * Takes the charges, not the temperature, to where they are after a current that runs along a parabola has flowed from
     * another state on, through a share of the time that the parabola spans.
     */
    void advanceFrom(BatteryWork start, DriveCurve curve, double share, double wholeS) {
        double durationS = share * wholeS;
        removedAh = start.removedAh + (curve.meanA(share) + start.selfDischargeA) * durationS / SECONDS_PER_HOUR;
        System.arraycopy(start.boundAh, 0, boundAh, 0, boundAh.length);
        modes.advance(boundAh, curve.drive0A(), curve.drive1A() * share, curve.drive2A() * share * share, durationS);
    }

    /** Takes note of when in a time just passed was driven what its mean alone has driven so far. */
    public void lag(double[] meanAheadAh, double[] agoS, int slices) {
        modes.lag(boundAh, meanAheadAh, agoS, slices);
    }

    /** Sum of the modes' weights: bound charge for each charge drawn in a short time. */
    public double totalWeight() {
        double sum = 0;
        for (int m = 0; m < modes.size(); m++) {
            sum += modes.weight(m);
        }
        return sum;
    }

    /** Share of the modes' weights that acts while charging. */
    public double chargingFactor() {
        return modes.chargingFactor();
    }

    /** Lets the temperature follow the air round it for a time. */
    public void warm(double airC, double underHoodC, double durationS) {
        double roundC = inEngineSpace ? underHoodC : airC;
        if (roundC != temperatureC) {
            warmTo(temperatureC - (roundC - temperatureC) * Math.expm1(-durationS / thermalTimeConstantS));
        }
    }

    /** The same in air that changes: that of the time's first half, and that of its second. */
    public void warm(double airC, double underHoodC, double laterAirC, double laterUnderHoodC, double durationS) {
        double roundC = inEngineSpace ? underHoodC : airC;
        double laterC = inEngineSpace ? laterUnderHoodC : laterAirC;
        if (roundC != temperatureC || laterC != temperatureC) {
            double approach = -Math.expm1(-0.5 * durationS / thermalTimeConstantS);
            double halfwayC = temperatureC + (roundC - temperatureC) * approach;
            warmTo(halfwayC + (laterC - halfwayC) * approach);
        }
    }

    private void warmTo(double newC) {
        temperatureC = newC;
        if (Math.abs(newC - terminal.temperatureC()) > TEMPERATURE_GRAIN_K) {
            terminal.warmTo(newC);
            selfDischargeA = battery.selfDischargeA(newC);
        }
    }

    /** Sets what the protection inside lets through. */
    public void allow(boolean charge, boolean discharge) {
        mayCharge = charge;
        mayDischarge = discharge;
    }

    public boolean mayCharge() {
        return mayCharge;
    }

    public boolean mayDischarge() {
        return mayDischarge;
    }

    /** Whether it takes no more charge. */
    public boolean isFull() {
        return terminal.chargingState(removedAh, totalBoundAh()) >= FULL_SURFACE;
    }

    public Terminal terminal() {
        return terminal;
    }

    public double selfDischargeA() {
        return selfDischargeA;
    }

    public double temperatureC() {
        return temperatureC;
    }

    /** Voltage at no current (V). */
    public double idleV() {
        return terminal.idleV(removedAh, totalBoundAh());
    }

    public double removedAh() {
        return removedAh;
    }

    public double totalBoundAh() {
        double sumAh = 0;
        for (double modeAh : boundAh) {
            sumAh += modeAh;
        }
        return sumAh;
    }

    public double stateOfChargeFraction() {
        return 1 - removedAh / battery.capacityAh();
    }
}
