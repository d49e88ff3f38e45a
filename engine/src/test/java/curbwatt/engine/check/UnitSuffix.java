package curbwatt.engine.check;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** The unit at the end of a number's name: {@code ratedCurrentA}, {@code slopeVPerK}, {@code dutyFraction}. */
public final class UnitSuffix {

    /** Units as they end a name. Two of them joined by {@code Per} are a unit too, as is {@code Per} before one. */
    static final List<String> UNITS = List.of(
            "V", "A", "Ah", "As", "Vh", "W", "Wh", "J", "Ohm", "F", "Hz", // electrical
            "S", "Ms", "Min", "H", "Days", // time; Ms is milliseconds
            "C", "K", "Percent", // temperature, and hundredths
            "Rpm", "M", "Mm", "Mm2", "Litres", "Litre", "Kg", "Mol", "Px", // shaft, copper, fuel, matter, pictures
            "Money", "Year", "Years", "Start"); // what a year costs, in any currency

    /** Endings of a number without a unit; they may also be the whole name. */
    static final List<String> RATIOS = List.of("Fraction", "Ratio", "Exponent", "Factor");

    private static final Pattern ENDING = ending();

    private UnitSuffix() {}

    /** Whether the name says its unit, or that it has none. */
    public static boolean ends(String name) {
        return ENDING.matcher(name).matches();
    }

    private static Pattern ending() {
        String unit = "(?:" + String.join("|", UNITS) + ")";
        String ratio = String.join("|", RATIOS);
        String whole = ratio.toLowerCase(Locale.ROOT);
        // The letter before the unit is small or a digit, so that "levelSOC" is not taken for degrees Celsius;
        // "resistance25COhm" says at which temperature.
        return Pattern.compile(
                whole + "|\\w*(?:[a-z0-9]|[0-9]C)(?:" + ratio + "|" + unit + "(?:Per" + unit + ")?|Per" + unit + ")");
    }
}
