package curbwatt.engine.battery.label;

import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.DiffusionModes;
import curbwatt.engine.battery.Terminal;
import curbwatt.engine.numeric.Root;
import curbwatt.engine.quantity.Require;

/** Runs the label tests on a battery. */
public final class LabelTestRun {
    private static final double CURRENT_TOLERANCE_A = 1e-10;
    private static final double EXHAUSTED_V = -100;
    private static final double MINUTES_PER_HOUR = 60;
    private static final double SECONDS_PER_HOUR = 3600;

    private LabelTestRun() {}

    /** Returns all three figures that the battery reaches; the 20 h test runs at its rated capacity over 20 h. */
    public static LabelFigures all(Battery battery) {
        double c20Ah = battery.parameters().ratedC20Ah();
        return new LabelFigures(twentyHoursAh(battery, c20Ah), reserveMin(battery), coldCrankingA(battery));
    }

    /**
     * Returns the charge delivered in the 20 h test, Ah.
     *
     * @param battery the battery
     * @param ratedC20Ah rated capacity; the test current is a twentieth of it per hour, Ah
     */
    public static double twentyHoursAh(Battery battery, double ratedC20Ah) {
        double currentA = ratedC20Ah / LabelTest.TWENTY_HOURS_H;
        return new DischargeCurve(battery, LabelTest.TWENTY_HOURS.temperatureC(), currentA)
                .deliveredAh(LabelTest.TWENTY_HOURS.endV());
    }

    /** Returns the time that the reserve test takes, min. */
    public static double reserveMin(Battery battery) {
        return MINUTES_PER_HOUR
                * new DischargeCurve(battery, LabelTest.RESERVE.temperatureC(), LabelTest.RESERVE_A)
                        .timeToH(LabelTest.RESERVE.endV());
    }

    /** Returns the current that the cold cranking test would allow, A. */
    public static double coldCrankingA(Battery battery) {
        return crankingA(battery, LabelTest.COLD_CRANKING.temperatureC());
    }

    /**
     * Returns the current that leaves 7.2 V after 30 s at any temperature, from full, A: the cranking ability.
     *
     * @param battery the battery
     * @param temperatureC its temperature, °C
     */
    public static double crankingA(Battery battery, double temperatureC) {
        return crankingA(battery, temperatureC, LabelTest.COLD_CRANKING.endV(), LabelTest.CRANKING_S);
    }

    /**
     * Returns the constant current that leaves a voltage after a time, from full, A.
     *
     * @param battery the battery
     * @param temperatureC its temperature, °C
     * @param endV voltage to be left, V
     * @param durationS time, s, above 0
     */
    public static double crankingA(Battery battery, double temperatureC, double endV, double durationS) {
        Require.positive("durationS", durationS, "s");
        Terminal terminal = battery.at(temperatureC);
        DiffusionModes modes = battery.modes();
        Require.inside("endV", endV, 0, terminal.restVoltageV(1), "V");
        double durationH = durationS / SECONDS_PER_HOUR;
        double reachH = durationH + modes.boundFromRestAh(1, durationH);
        return Root.between(
                currentA -> Math.max(
                                terminal.voltageV(
                                        currentA * durationH, modes.boundFromRestAh(currentA, durationH), currentA),
                                EXHAUSTED_V)
                        - endV,
                0,
                terminal.totalChargeAh() / reachH,
                CURRENT_TOLERANCE_A);
    }
}
