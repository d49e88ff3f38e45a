package curbwatt.engine.wiring;

/** Where a wire runs, as far as its rating goes. ABYC E-11, 33 CFR 183.425. */
public enum WireSpace {
    /** Outside the engine space, 30 °C. */
    OUTSIDE_ENGINE_SPACE(1),
    /** Inside the engine space, 50 °C. */
    INSIDE_ENGINE_SPACE(0.85);

    private final double factor;

    WireSpace(double factor) {
        this.factor = factor;
    }

    /** Returns the share of the rating that is left. */
    public double factor() {
        return factor;
    }
}
