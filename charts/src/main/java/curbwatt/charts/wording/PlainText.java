package curbwatt.charts.wording;

import java.util.Collection;
import java.util.List;
import java.util.Locale;

/** Numbers and names as a reader wants them. */
public final class PlainText {

    private static final long MINUTE_S = 60;
    private static final long HOUR_S = 3600;
    private static final long DAY_S = 86400;
    /** Keeps 3600 s that rounding made 3599.999999 from being read as 59 min. */
    private static final double TIME_ROUNDING_S = 1e-3;

    private PlainText() {}

    /**
     * A time as "45 s", "3 min 20 s", "48 min", "1 h 52 min" or "3 d 4 h". Cut, not rounded, so that nothing is said
     * to have
     * lasted longer than it did.
     *
     * @param timeS time (s), 0 or above
     */
    public static String time(double timeS) {
        long s = (long) Math.floor(timeS + TIME_ROUNDING_S);
        if (s < MINUTE_S) {
            return s + " s";
        }
        if (s < 10 * MINUTE_S) {
            return two(s / MINUTE_S, "min", s % MINUTE_S, "s");
        }
        if (s < HOUR_S) {
            return s / MINUTE_S + " min";
        }
        if (s < 2 * DAY_S) {
            return two(s / HOUR_S, "h", s % HOUR_S / MINUTE_S, "min");
        }
        return two(s / DAY_S, "d", s % DAY_S / HOUR_S, "h");
    }

    /** A time to the second, for tables: "1 h 52 min 07 s". */
    public static String timeToSecond(double timeS) {
        long s = (long) Math.floor(timeS + TIME_ROUNDING_S);
        if (s < HOUR_S) {
            return s < MINUTE_S ? s + " s" : String.format(Locale.ROOT, "%d min %02d s", s / MINUTE_S, s % MINUTE_S);
        }
        return String.format(Locale.ROOT, "%d h %02d min %02d s", s / HOUR_S, s % HOUR_S / MINUTE_S, s % MINUTE_S);
    }

    /** A time since midnight as on a clock: "06:40". Cut, not rounded. */
    public static String clock(double timeS) {
        long minutes = (long) Math.floor(timeS + TIME_ROUNDING_S) / MINUTE_S;
        return String.format(Locale.ROOT, "%02d:%02d", minutes / 60 % 24, minutes % 60);
    }

    /** When something happened: "at the start" or "after 48 min". */
    public static String after(double timeS) {
        return timeS < 1 ? "at the start" : "after " + time(timeS);
    }

    /** A voltage to the hundredth: "11.80 V". */
    public static String volts(double voltageV) {
        return number(voltageV, 2) + " V";
    }

    /** A current: "0.35 A", "4.2 A", "38 A". */
    public static String amperes(double currentA) {
        double size = Math.abs(currentA);
        return number(currentA, size < 1 ? 2 : size < 20 ? 1 : 0) + " A";
    }

    /** A share as a whole percentage: "71 %". */
    public static String percent(double fraction) {
        return number(100 * fraction, 0) + " %";
    }

    /** A charge: "12.4 Ah". */
    public static String ampereHours(double chargeAh) {
        return number(chargeAh, Math.abs(chargeAh) < 1 ? 2 : 1) + " Ah";
    }

    /** An energy: "412 Wh". */
    public static String wattHours(double energyWh) {
        return number(energyWh, Math.abs(energyWh) < 10 ? 1 : 0) + " Wh";
    }

    /** A number with so many decimals, with a true minus sign; none before a zero. */
    public static String number(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        boolean zero = text.matches("-0(\\.0*)?");
        return zero ? text.substring(1) : text.replace('-', '−');
    }

    /** A name in quotation marks. */
    public static String quoted(String name) {
        return "'" + name + "'";
    }

    /** Names in quotation marks, joined: "'Radios'", "'Radios' and 'Dock'", "'A', 'B' and 'C'". Sorted. */
    public static String names(Collection<String> names) {
        List<String> quoted = names.stream().sorted().map(PlainText::quoted).toList();
        int last = quoted.size() - 1;
        return last < 1
                ? String.join("", quoted)
                : String.join(", ", quoted.subList(0, last)) + " and " + quoted.get(last);
    }

    /** "1 event", "2 events". */
    public static String count(long number, String noun) {
        return number + " " + noun + (number == 1 ? "" : "s");
    }

    private static String two(long large, String largeUnit, long small, String smallUnit) {
        return large + " " + largeUnit + (small == 0 ? "" : " " + small + " " + smallUnit);
    }
}
