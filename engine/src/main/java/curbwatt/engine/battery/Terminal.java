package curbwatt.engine.battery;

import curbwatt.engine.quantity.Require;

/**
 * A battery at one temperature, as seen at its posts.
 *
 * <pre>
 *   V = OCV(s) − b ln(h_bulk/h) − a asinh(I/(2 i0 C)) − I R(s,T) [ + |I| Kc 2^((25−T)/15) / (C (1 − s)) if I &lt; 0 ]
 *   s = 1 − (q + Σx)/C,   h = 1 − (q + Σx)/A(T),   h_bulk = 1 − q/A(T)
 * </pre>
 *
 * <p>The current of these equations is that of the main reaction, positive when it discharges. While the main reaction
 * does not discharge, gassing runs beside it: I_terminal = I_main − I_gas.
 *
 * <p>s is not clamped: towards the end of a lead-acid battery's discharge q + Σx passes C on its way to A(T), s falls
 * below 0 and the rest voltage goes on along its line.
 *
 * <p>It belongs to whoever asked {@link Battery#at} for it, and stays at its temperature until {@link #warmTo(double)}: a run that
 * warms a battery by a millikelvin ten thousand times makes no ten thousand of them. All other methods are pure functions. None
 * allocates anything.
 */
public final class Terminal {
    private static final double REFERENCE_C = 25;
    private static final double KELVIN = 273.15;
    private static final double GAS_CONSTANT_J_PER_MOL_K = 8.314462618;
    private static final double COLDEST_C = -60;
    private static final double HOTTEST_C = 80;
    /** Head that a battery at no current is taken to have at least: keeps its voltage finite after exhaustion. */
    private static final double LEAST_IDLE_HEAD = 1e-3;
    /** Bulk that a charged surface is compared with at least: an emptied, chilled battery has none left by A(T). */
    private static final double LEAST_BULK = 0.01;
    /** Of our own: binds in the last thousandths of the charge only, and lets the current go to nothing in minutes. */
    private static final double SURFACE_REACH = 20;

    private final Battery battery;
    private final double capacityAh;
    private final RestVoltage rest;
    private final double concentrationV;
    private final double activationV;
    private final double twiceExchangeA;
    private final double emptyResistanceRiseFraction;
    private final double gassingPerV;
    private double temperatureC;
    private double warmerK;
    private double totalChargeAh;
    private double resistanceOhm;
    private double acceptanceOhm;
    private double gassingAtZeroVoltA;

    Terminal(Battery battery, double temperatureC) {
        this.battery = battery;
        ChemistryConstants constants = battery.parameters().chemistry().constants();
        ChemistryConstants.Discharge discharge = constants.discharge();
        rest = constants.rest();
        capacityAh = battery.capacityAh();
        concentrationV = discharge.concentrationV();
        activationV = discharge.activationV();
        twiceExchangeA = 2 * discharge.exchangeCurrentPerH() * capacityAh;
        emptyResistanceRiseFraction = discharge.emptyResistanceRiseFraction();
        gassingPerV = constants.gassing().growthPerV() / constants.cells();
        warmTo(temperatureC);
    }

    /**
     * Takes the battery to another temperature.
     *
     * @param newC °C, −60 to 80
     * @throws IllegalArgumentException if it lies outside
     */
    public void warmTo(double newC) {
        temperatureC = Require.inside("temperatureC", newC, COLDEST_C, HOTTEST_C, "°C");
        warmerK = temperatureC - REFERENCE_C;
        BatteryParameters parameters = battery.parameters();
        ChemistryConstants constants = parameters.chemistry().constants();
        ChemistryConstants.Discharge discharge = constants.discharge();
        ChemistryConstants.Charge charge = constants.charge();
        ChemistryConstants.Gassing gassing = constants.gassing();
        totalChargeAh = battery.totalChargeAh() * discharge.chargeShare(warmerK);
        resistanceOhm = parameters.resistanceOhm()
                * battery.condition().resistanceGrowthFactor()
                * Math.exp(discharge.activationEnergyJPerMol()
                        / GAS_CONSTANT_J_PER_MOL_K
                        * (1 / (temperatureC + KELVIN) - 1 / (REFERENCE_C + KELVIN)));
        acceptanceOhm = charge.acceptanceVh() * Math.pow(2, -warmerK / charge.doublingK()) / capacityAh;
        gassingAtZeroVoltA = parameters.ratedC20Ah()
                / 100
                * gassing.per100AhA()
                * Math.exp(gassing.growthPerK() * (temperatureC - gassing.referenceC())
                        - gassing.growthPerV() * gassing.referenceCellV());
    }

    /**
     * Takes it to the temperature of another one.
     *
     * @param other of the same battery
     */
    public void warmTo(Terminal other) {
        temperatureC = other.temperatureC;
        warmerK = other.warmerK;
        totalChargeAh = other.totalChargeAh;
        resistanceOhm = other.resistanceOhm;
        acceptanceOhm = other.acceptanceOhm;
        gassingAtZeroVoltA = other.gassingAtZeroVoltA;
    }

    /** Returns the temperature, °C. */
    public double temperatureC() {
        return temperatureC;
    }

    /** Returns A(T), Ah: the charge that an endlessly slow discharge at this temperature would give. */
    public double totalChargeAh() {
        return totalChargeAh;
    }

    /**
     * Returns the terminal voltage, V: {@link #openV} or {@link #idleV} less {@link #dropV}.
     *
     * <p>Discharging with an exhausted head (h ≤ 0) gives negative infinity, charging a surface that is full (s ≥ 1)
     * positive infinity: the current is not to be had at any voltage.
     *
     * @param removedAh q, net charge removed, Ah
     * @param boundAh Σx over the modes, Ah
     * @param currentA current of the main reaction, A, positive when discharging
     */
    public double voltageV(double removedAh, double boundAh, double currentA) {
        double startV = currentA > 0 ? openV(removedAh, boundAh) : idleV(removedAh, boundAh);
        double surface = currentA < 0 ? chargingState(removedAh, boundAh) : surfaceState(removedAh, boundAh);
        return startV - dropV(surface, currentA);
    }

    /**
     * Returns the voltage that a discharge starts from as its current goes to nothing, V; negative infinity with an
     * exhausted head.
     *
     * @param removedAh q, net charge removed, Ah
     * @param boundAh Σx over the modes, Ah
     */
    public double openV(double removedAh, double boundAh) {
        double headFraction = headFraction(removedAh, boundAh);
        return headFraction > 0 ? voltageAtHead(removedAh, boundAh, headFraction) : Double.NEGATIVE_INFINITY;
    }

    /**
     * Returns the voltage of a battery that is left alone or being charged, before the charging current adds to it, V.
     * As
     * {@link #openV}, but finite: the last thousandth of the head is not told apart.
     *
     * @param removedAh q, net charge removed, Ah
     * @param boundAh Σx over the modes, Ah
     */
    public double idleV(double removedAh, double boundAh) {
        return voltageAtHead(removedAh, boundAh, Math.max(LEAST_IDLE_HEAD, headFraction(removedAh, boundAh)));
    }

    /** Whether so little of the head is left that {@link #openV} and {@link #idleV} differ. */
    public boolean isNearlyExhausted(double removedAh, double boundAh) {
        return headFraction(removedAh, boundAh) < LEAST_IDLE_HEAD;
    }

    private double voltageAtHead(double removedAh, double boundAh, double headFraction) {
        double bulkFraction = Math.max(1 - removedAh / totalChargeAh, Math.min(headFraction, LEAST_BULK));
        double surface = surfaceState(removedAh, boundAh);
        return rest.voltageV(surface, warmerK) + concentrationV * Math.log(headFraction / bulkFraction);
    }

    /**
     * Returns what a current takes off the voltage, V: activation, resistance and, charging, the missing charge; below
     * 0
     * when charging.
     *
     * @param surface s, see {@link #surfaceState}; charging, see {@link #chargingState}
     * @param currentA current of the main reaction, A, positive when discharging
     */
    public double dropV(double surface, double currentA) {
        if (currentA == 0) {
            return 0;
        }
        if (currentA < 0 && surface >= 1) {
            return Double.NEGATIVE_INFINITY;
        }
        return activationV * asinh(currentA / twiceExchangeA) + currentA * ohmic(surface, currentA);
    }

    /**
     * Returns the slope of {@link #voltageV} over the current, V/A, never above 0; at no current that of the
     * discharging side, and negative infinity where a full surface takes no charge.
     *
     * @param surface s, see {@link #surfaceState}; charging, see {@link #chargingState}
     * @param currentA current of the main reaction, A, positive when discharging
     */
    public double slopeVPerA(double surface, double currentA) {
        if (currentA < 0 && surface >= 1) {
            return Double.NEGATIVE_INFINITY;
        }
        double ratio = currentA / twiceExchangeA;
        return -activationV / (twiceExchangeA * Math.sqrt(1 + ratio * ratio)) - ohmic(surface, currentA);
    }

    /**
     * Returns the gassing current, A, never below 0. It flows only while the main reaction does not discharge.
     *
     * @param voltageV terminal voltage, V
     */
    public double gassingA(double voltageV) {
        return gassingAtZeroVoltA * Math.exp(gassingPerV * voltageV);
    }

    /**
     * Returns the slope of {@link #gassingA} over the voltage, A/V, never below 0.
     *
     * @param voltageV terminal voltage, V
     */
    public double gassingSlopeAPerV(double voltageV) {
        return gassingPerV * gassingA(voltageV);
    }

    /** Returns s = 1 − (q + Σx)/C, not clamped: 1 is a full surface, 0 and below a spent one. */
    public double surfaceState(double removedAh, double boundAh) {
        return 1 - (removedAh + boundAh) / capacityAh;
    }

    /**
     * Returns the state that a charging current meets: the surface's, but never emptier than {@value #SURFACE_REACH}
     * times the charge that the whole battery misses.
     *
     * <p>After a discharge bound charge holds the surface down. Were that all, charging would break off at its full
     * height once q is back, and self-discharge would let it begin again at once.
     *
     * @param removedAh q, net charge removed, Ah
     * @param boundAh Σx over the modes, Ah
     */
    public double chargingState(double removedAh, double boundAh) {
        return 1 - Math.min(removedAh + boundAh, SURFACE_REACH * removedAh) / capacityAh;
    }

    /** Returns h = 1 − (q + Σx)/A(T), not clamped: at 0 nothing more can be drawn for now. */
    public double headFraction(double removedAh, double boundAh) {
        return 1 - (removedAh + boundAh) / totalChargeAh;
    }

    /**
     * Returns the voltage after a long rest, V.
     *
     * @param stateOfChargeFraction 1 − q/C
     */
    public double restVoltageV(double stateOfChargeFraction) {
        return rest.voltageV(stateOfChargeFraction, warmerK);
    }

    /**
     * Returns the energy that the charge above empty has at rest voltage, Wh.
     *
     * @param stateOfChargeFraction 1 − q/C
     */
    public double storedWh(double stateOfChargeFraction) {
        return capacityAh * stateOfChargeFraction * rest.meanV(stateOfChargeFraction, warmerK);
    }

    private double resistanceOhm(double surface) {
        return resistanceOhm * (1 + emptyResistanceRiseFraction * (1 - surface));
    }

    private double ohmic(double surface, double currentA) {
        return resistanceOhm(surface) + (currentA < 0 ? acceptanceOhm / (1 - surface) : 0);
    }

    private static double asinh(double x) {
        double magnitude = Math.abs(x);
        // log1p form: as exact near 0 as far out
        double square = magnitude * magnitude;
        return Math.copySign(Math.log1p(magnitude + square / (1 + Math.sqrt(1 + square))), x);
    }
}
