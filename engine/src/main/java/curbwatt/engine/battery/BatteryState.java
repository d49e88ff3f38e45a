package curbwatt.engine.battery;

import curbwatt.engine.quantity.Require;
import java.util.Collections;
import java.util.List;

/**
 * How much has been drawn from a battery, and how much of the rest is out of reach for now.
 *
 * @param removedAh q, net charge removed since full, Ah
 * @param boundAh x of each diffusion mode, Ah; negative after charging
 */
public record BatteryState(double removedAh, List<Double> boundAh) {
    /** Copies the list and refuses numbers that are not finite. */
    public BatteryState {
        Require.finite("removedAh", removedAh, "Ah");
        boundAh = List.copyOf(boundAh);
        boundAh.forEach(x -> Require.finite("boundAh", x, "Ah"));
    }

    /** Returns a full battery at rest. */
    public static BatteryState full(DiffusionModes modes) {
        return new BatteryState(0, Collections.nCopies(modes.size(), 0.0));
    }

    /**
     * Returns a battery at rest.
     *
     * @param stateOfChargeFraction share of the battery's present (aged) capacity that is left, 0 to 1
     */
    public static BatteryState atStateOfCharge(double stateOfChargeFraction, Battery battery) {
        Require.inside("stateOfChargeFraction", stateOfChargeFraction, 0, 1, "");
        return new BatteryState(
                (1 - stateOfChargeFraction) * battery.capacityAh(),
                Collections.nCopies(battery.modes().size(), 0.0));
    }

    /** Returns 1 − q/C. */
    public double stateOfChargeFraction(Battery battery) {
        return 1 - removedAh / battery.capacityAh();
    }

    /** Returns the sum of the bound charges, Ah. */
    public double totalBoundAh() {
        return boundAh.stream().mapToDouble(Double::doubleValue).sum();
    }
}
