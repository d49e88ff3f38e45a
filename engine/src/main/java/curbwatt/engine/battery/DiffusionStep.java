package curbwatt.engine.battery;

/**
 * {@link DiffusionModes#advance} for one fixed length of time, with its exponentials already taken. Immutable.
 *
 * <p>The result is the same to the last bit as that of {@code advance}.
 */
public final class DiffusionStep {
    /** 1 − e^(−Δt/τ) of each mode. */
    private final double[] approach;

    private final double[] dischargingReachH;
    private final double[] chargingReachH;

    DiffusionStep(double[] approach, double[] dischargingReachH, double[] chargingReachH) {
        this.approach = approach;
        this.dischargingReachH = dischargingReachH;
        this.chargingReachH = chargingReachH;
    }

    /**
     * Moves the bound charges through this step.
     *
     * @param boundAh bound charge of each mode, Ah; overwritten
     * @param currentA current during the step, A, positive when discharging
     */
    public void advance(double[] boundAh, double currentA) {
        double[] reachH = currentA < 0 ? chargingReachH : dischargingReachH;
        for (int m = 0; m < approach.length; m++) {
            boundAh[m] += (reachH[m] * currentA - boundAh[m]) * approach[m];
        }
    }
}
