package curbwatt.engine.battery;

import curbwatt.engine.numeric.MonotoneCubic;
import java.util.List;

/**
 * Freezing point of the electrolyte against state of charge. A caution, never a limit of the model: a frozen battery is
 * damaged, and the model goes on as if it were not.
 *
 * <p>Table of US Army TM 5-4210-230-14&amp;P-1, through a monotone cubic. Not to be mixed up with a widely copied chart
 * that puts −34 °F at half charge: it contradicts every table by specific gravity, which have about −15 °F there.
 */
public final class ElectrolyteFreezing {
    private static final MonotoneCubic FREEZING_C = new MonotoneCubic(
            List.of(0.0, 0.25, 0.50, 0.75, 1.0),
            List.of(celsius(15), celsius(5), celsius(-15), celsius(-35), celsius(-75)));

    /**
     * Returns the temperature at which the electrolyte begins to freeze, °C.
     *
     * @param stateOfChargeFraction 1 − q/C at rest; below 0 taken as 0, above 1 as 1
     */
    public double freezingC(double stateOfChargeFraction) {
        return FREEZING_C.value(stateOfChargeFraction);
    }

    private static double celsius(double fahrenheit) {
        return (fahrenheit - 32) / 1.8;
    }
}
