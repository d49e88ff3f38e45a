package curbwatt.engine.battery.label;

import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.BatteryParameters;
import curbwatt.engine.battery.Chemistry;
import curbwatt.engine.battery.DiffusionModes;
import curbwatt.engine.battery.Terminal;
import curbwatt.engine.numeric.Root;
import java.util.Locale;

/**
 * Finds the battery that passes the three tests of a label.
 *
 * <p>Three unknowns, nested: for a Peukert exponent the modes follow; for a capacity as well, the resistance that
 * passes
 * cold cranking has a closed form, because voltage is linear in resistance; the capacity is the root of the 20 h test,
 * and the exponent the root of the reserve test.
 */
public final class LabelFit {
    /** Below it a battery would be as good at any rate as at the slowest. */
    private static final double LEAST_EXPONENT = 1.005;
    /** Above it five modes no longer follow the law's lives within 1 %. */
    private static final double MOST_EXPONENT = 1.45;

    private static final double EXPONENT_TOLERANCE = 1e-13;
    private static final double CAPACITY_TOLERANCE_FRACTION = 1e-13;
    private static final double LEAST_CAPACITY_FRACTION = 0.7;
    private static final double MOST_CAPACITY_FRACTION = 1.6;
    /** Stands in for no resistance at all, which a battery cannot have. */
    private static final double LEAST_RESISTANCE_OHM = 1e-9;

    private static final double SECONDS_PER_HOUR = 3600;

    private final BatteryLabel label;
    private final LabelFigures figures;

    private LabelFit(BatteryLabel label) {
        this.label = label;
        this.figures = LabelEstimate.complete(label);
    }

    /**
     * Returns the battery that passes the label's tests, estimating figures that the label does not give.
     *
     * @throws InfeasibleLabelException if no battery passes them all
     */
    public static FittedLabel of(BatteryLabel label) {
        return new LabelFit(label).fit();
    }

    private FittedLabel fit() {
        double most = LabelTestRun.reserveMin(passingTwentyHours(LEAST_EXPONENT));
        double least = LabelTestRun.reserveMin(passingTwentyHours(MOST_EXPONENT));
        if (figures.reserveMin() > most || figures.reserveMin() < least) {
            throw infeasibleReserve(least, most);
        }
        double exponent = Root.between(
                p -> LabelTestRun.reserveMin(passingTwentyHours(p)) - figures.reserveMin(),
                LEAST_EXPONENT,
                MOST_EXPONENT,
                EXPONENT_TOLERANCE);
        Battery battery = passingTwentyHours(exponent);
        if (battery.parameters().resistanceOhm() <= LEAST_RESISTANCE_OHM) {
            throw infeasibleCranking(battery);
        }
        return new FittedLabel(
                label,
                figures,
                battery.parameters(),
                label.reserveMin().isEmpty(),
                label.coldCrankingA().isEmpty(),
                LabelTestRun.all(battery),
                ModeFit.of(new PeukertLaw(1, LabelTest.TWENTY_HOURS_H, exponent))
                        .worstResidualFraction());
    }

    /** The battery of this exponent that passes the 20 h test, and cold cranking as far as that is possible. */
    private Battery passingTwentyHours(double exponent) {
        ModeFit perAh = ModeFit.of(new PeukertLaw(1, LabelTest.TWENTY_HOURS_H, exponent));
        Chemistry chemistry = label.chemistry();
        DiffusionModes modes = perAh.modes(chemistry.constants().charge().modeFactor());
        double rated = figures.c20Ah();
        double capacityAh = Root.between(
                c -> LabelTestRun.twentyHoursAh(passingCranking(exponent, perAh, modes, c), rated) - rated,
                LEAST_CAPACITY_FRACTION * rated,
                MOST_CAPACITY_FRACTION * rated,
                CAPACITY_TOLERANCE_FRACTION * rated);
        return passingCranking(exponent, perAh, modes, capacityAh);
    }

    private Battery passingCranking(double exponent, ModeFit perAh, DiffusionModes modes, double capacityAh) {
        double withoutV = crankingEndV(battery(exponent, perAh, modes, capacityAh, LEAST_RESISTANCE_OHM));
        double withOneOhmV = crankingEndV(battery(exponent, perAh, modes, capacityAh, 1));
        double spareV = withoutV - LabelTest.COLD_CRANKING.endV();
        // an exhausted battery has no spare voltage either: it is at minus infinity
        double addedOhm = spareV > 0 ? spareV / (withoutV - withOneOhmV) * (1 - LEAST_RESISTANCE_OHM) : 0;
        return battery(exponent, perAh, modes, capacityAh, LEAST_RESISTANCE_OHM + addedOhm);
    }

    private double crankingEndV(Battery battery) {
        Terminal terminal = battery.at(LabelTest.COLD_CRANKING.temperatureC());
        double currentA = figures.coldCrankingA();
        double hours = LabelTest.CRANKING_S / SECONDS_PER_HOUR;
        return terminal.voltageV(currentA * hours, battery.modes().boundFromRestAh(currentA, hours), currentA);
    }

    private Battery battery(
            double exponent, ModeFit perAh, DiffusionModes modes, double capacityAh, double resistanceOhm) {
        return Battery.asNew(new BatteryParameters(
                label.chemistry(),
                figures.c20Ah(),
                capacityAh,
                capacityAh * perAh.totalChargeAh(),
                exponent,
                modes,
                resistanceOhm));
    }

    private InfeasibleLabelException infeasibleReserve(double leastMin, double mostMin) {
        double deliveredAh = LabelTest.RESERVE_A * figures.reserveMin() / 60;
        return new InfeasibleLabelException(String.format(
                Locale.ROOT,
                "reserveMin is %.1f min%s, which draws %.1f Ah at 25 A; a battery of c20Ah %.1f Ah and coldCrankingA"
                        + " %.0f A has a reserve between %.1f and %.1f min",
                figures.reserveMin(),
                label.reserveMin().isEmpty() ? " (estimated)" : "",
                deliveredAh,
                figures.c20Ah(),
                figures.coldCrankingA(),
                leastMin,
                mostMin));
    }

    private InfeasibleLabelException infeasibleCranking(Battery battery) {
        return new InfeasibleLabelException(String.format(
                Locale.ROOT,
                "coldCrankingA is %.0f A%s; a battery of c20Ah %.1f Ah and reserveMin %.1f min gives less than %.0f A"
                        + " at -18 °C, even without ohmic resistance",
                figures.coldCrankingA(),
                label.coldCrankingA().isEmpty() ? " (estimated)" : "",
                figures.c20Ah(),
                figures.reserveMin(),
                Math.ceil(LabelTestRun.coldCrankingA(battery))));
    }
}
