package curbwatt.engine.wiring;

import java.util.List;

/**
 * Vehicle cable sold by gauge: its least area by SAE J1127 and J1128 is 3 to 11 % below that of the American gauge of
 * the same
 * number.
 *
 * @param number gauge: 18, 16, 14, 12, 10, 8, 6, 4, 2, 1, 0 (called 1/0), −1, −3
 */
public record VehicleCable(int number) implements WireSize {
    static final List<Integer> NUMBERS = List.of(18, 16, 14, 12, 10, 8, 6, 4, 2, 1, 0, -1, -3);
    /** Circular mils, the area of a circle of a thousandth of an inch. */
    private static final List<Integer> LEAST_CIRCULAR_MILS =
            List.of(1537, 2336, 3702, 5833, 9343, 14_810, 24_538, 37_360, 62_450, 77_790, 98_980, 125_100, 205_500);

    private static final double CIRCULAR_MIL_MM2 = Math.PI / 4 * 0.0254 * 0.0254;

    /** Refuses gauges that the standards do not have. */
    public VehicleCable {
        if (!NUMBERS.contains(number)) {
            throw new IllegalArgumentException("number is " + number + " SAE, allowed is one of " + NUMBERS);
        }
    }

    @Override
    public double areaMm2() {
        return LEAST_CIRCULAR_MILS.get(NUMBERS.indexOf(number)) * CIRCULAR_MIL_MM2;
    }

    @Override
    public String label() {
        return "SAE " + WireGauge.name(number);
    }
}
