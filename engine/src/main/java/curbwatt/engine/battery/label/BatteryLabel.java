package curbwatt.engine.battery.label;

import curbwatt.engine.battery.Chemistry;
import curbwatt.engine.quantity.Require;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * The figures printed on a lead-acid battery. Figures that contradict each other are refused by {@link LabelFit}, not
 * here.
 *
 * @param chemistry kind of battery, not LFP
 * @param c20Ah 20 h capacity to 10.5 V at 25 °C, Ah, 5 to 1000
 * @param reserveMin time at 25 A to 10.5 V at 27 °C, min, 3 to 6000; empty where the label does not say
 * @param coldCrankingA current that leaves 7.2 V after 30 s at −18 °C, A, 1 to 30 times {@code c20Ah}; empty where the
 *     label does not say
 */
public record BatteryLabel(Chemistry chemistry, double c20Ah, OptionalDouble reserveMin, OptionalDouble coldCrankingA) {
    /** Refuses figures that no 12 V lead-acid battery has. */
    public BatteryLabel {
        Objects.requireNonNull(chemistry, "chemistry");
        if (chemistry == Chemistry.LFP) {
            throw new IllegalArgumentException(
                    "chemistry is LFP, allowed is a lead-acid one; an LFP pack has an LfpLabel");
        }
        Require.inside("c20Ah", c20Ah, 5, 1000, "Ah");
        reserveMin.ifPresent(min -> Require.inside("reserveMin", min, 3, 6000, "min"));
        coldCrankingA.ifPresent(a -> Require.inside("coldCrankingA", a, c20Ah, 30 * c20Ah, "A"));
    }

    /** Returns a label that gives all three figures. */
    public static BatteryLabel of(Chemistry chemistry, double c20Ah, double reserveMin, double coldCrankingA) {
        return new BatteryLabel(chemistry, c20Ah, OptionalDouble.of(reserveMin), OptionalDouble.of(coldCrankingA));
    }
}
