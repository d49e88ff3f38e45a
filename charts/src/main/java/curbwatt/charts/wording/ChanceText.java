package curbwatt.charts.wording;

import curbwatt.engine.study.odds.Chance;

/**
 * A chance in words.
 *
 * @param chance the chance
 */
public record ChanceText(Chance chance) {

    private static final double FINE = 0.01;
    private static final double LEAST = 0.001;

    /** "93 %". */
    public String share() {
        return share(chance.fraction());
    }

    /** "90 to 95 %". */
    public String bounds() {
        return number(chance.lowFraction()) + " to " + share(chance.highFraction());
    }

    /** "93 % (90 to 95 %)". */
    public String whole() {
        return share() + " (" + bounds() + ")";
    }

    /** A share as a percentage, fine near 0 and 1; neither is said of what is not so throughout. */
    public static String share(double fraction) {
        return number(fraction) + " %";
    }

    private static String number(double fraction) {
        if (fraction <= 0 || fraction >= 1) {
            return fraction <= 0 ? "0" : "100";
        }
        if (fraction < FINE || fraction > 1 - FINE) {
            return PlainText.number(100 * Math.max(LEAST, Math.min(1 - LEAST, fraction)), 1);
        }
        return PlainText.number(100 * fraction, 0);
    }
}
