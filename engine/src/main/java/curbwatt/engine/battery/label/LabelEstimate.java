package curbwatt.engine.battery.label;

/**
 * What a label's missing figures are likely to be. A guess from other labels, not a property of the battery at hand.
 */
public final class LabelEstimate {
    private static final double RESERVE_FACTOR = 0.83;
    private static final double RESERVE_EXPONENT = 1.17;
    /** One label that gives both figures, 74 Ah and 680 A, transcribed in a public repository. */
    private static final double COLD_CRANKING_A_PER_AH = 680.0 / 74.0;

    private LabelEstimate() {}

    /**
     * Returns the reserve capacity usual for a 20 h capacity, min: 0.83 · C20^1.17, from the glossary of a maker's
     * public
     * manual. Other published conversions differ from it by up to a fifth.
     *
     * @param c20Ah 20 h capacity, Ah
     */
    public static double reserveMin(double c20Ah) {
        return RESERVE_FACTOR * Math.pow(c20Ah, RESERVE_EXPONENT);
    }

    /**
     * Returns the cold cranking current usual for a 20 h capacity, A: in proportion to one published label of 74 Ah and
     * 680 A, 9.2 A for an ampere-hour. Labels in a truck maker's public manual span about 6 to 10.5.
     *
     * @param c20Ah 20 h capacity, Ah
     */
    public static double coldCrankingA(double c20Ah) {
        return COLD_CRANKING_A_PER_AH * c20Ah;
    }

    /** Returns the label's figures, the missing ones estimated. */
    public static LabelFigures complete(BatteryLabel label) {
        return new LabelFigures(
                label.c20Ah(),
                label.reserveMin().orElseGet(() -> reserveMin(label.c20Ah())),
                label.coldCrankingA().orElseGet(() -> coldCrankingA(label.c20Ah())));
    }
}
