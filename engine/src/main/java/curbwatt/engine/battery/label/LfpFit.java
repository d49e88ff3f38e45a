package curbwatt.engine.battery.label;

import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.BatteryParameters;
import curbwatt.engine.battery.Chemistry;
import curbwatt.engine.numeric.Root;
import java.util.Locale;

/**
 * Finds the battery that passes the capacity test of an {@link LfpLabel}.
 *
 * <p>One unknown, C. The modes follow Peukert's law with the exponent that is published for the chemistry; and A = C,
 * because the rest voltage reaches the end of the test at state of charge 0, not beyond it.
 */
public final class LfpFit {
    /** Of iron-phosphate batteries: a public encyclopaedia of the trade has 1.05, others 1.01 to 1.08. */
    public static final double PEUKERT_EXPONENT = 1.05;
    /** Voltage at which the capacity test ends: 2.5 V a cell, V. */
    public static final double END_V = 10.0;

    private static final double TEST_C = 25;
    private static final double LEAST_CAPACITY_FRACTION = 0.9;
    private static final double MOST_CAPACITY_FRACTION = 3;
    private static final double CAPACITY_TOLERANCE_FRACTION = 1e-13;

    private final LfpLabel label;
    private final ModeFit perRatedAh;

    private LfpFit(LfpLabel label) {
        this.label = label;
        this.perRatedAh = ModeFit.of(new PeukertLaw(1, LabelTest.TWENTY_HOURS_H, PEUKERT_EXPONENT));
    }

    /**
     * Returns the battery that passes the label's capacity test.
     *
     * @throws InfeasibleLabelException if the resistance alone takes the voltage below the end of the test
     */
    public static BatteryParameters of(LfpLabel label) {
        return new LfpFit(label).fit();
    }

    private BatteryParameters fit() {
        double ratedAh = label.ratedAh();
        if (spareAh(MOST_CAPACITY_FRACTION * ratedAh) < 0) {
            throw new InfeasibleLabelException(String.format(
                    Locale.ROOT,
                    "resistanceOhm is %.4f Ohm; it takes %.1f V at the %.1f A that empty a pack of %.1f Ah in %.1f h",
                    label.resistanceOhm(),
                    label.resistanceOhm() * ratedAh / label.ratedH(),
                    ratedAh / label.ratedH(),
                    ratedAh,
                    label.ratedH()));
        }
        return withCapacity(Root.between(
                this::spareAh,
                LEAST_CAPACITY_FRACTION * ratedAh,
                MOST_CAPACITY_FRACTION * ratedAh,
                CAPACITY_TOLERANCE_FRACTION * ratedAh));
    }

    /** Charge by which a battery of this capacity exceeds the label in the test, Ah. */
    private double spareAh(double capacityAh) {
        DischargeCurve test =
                new DischargeCurve(Battery.asNew(withCapacity(capacityAh)), TEST_C, label.ratedAh() / label.ratedH());
        return test.deliveredAh(END_V) - label.ratedAh();
    }

    private BatteryParameters withCapacity(double capacityAh) {
        double c20Ah = label.ratedAh() * Math.pow(LabelTest.TWENTY_HOURS_H / label.ratedH(), 1 - 1 / PEUKERT_EXPONENT);
        return new BatteryParameters(
                Chemistry.LFP,
                c20Ah,
                capacityAh,
                capacityAh,
                PEUKERT_EXPONENT,
                perRatedAh.modes(Chemistry.LFP.constants().charge().modeFactor()),
                label.resistanceOhm());
    }
}
