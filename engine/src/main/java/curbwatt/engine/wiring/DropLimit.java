package curbwatt.engine.wiring;

/** How much of the system's voltage a feed may lose, out and back. ABYC E-11. */
public enum DropLimit {
    /** What safety or a radio depends on: 3 %. */
    CRITICAL(0.03),
    /** Anything else: 10 %. Public purchase specifications for fire trucks ask for the same. */
    OTHER(0.10);

    private final double fraction;

    DropLimit(double fraction) {
        this.fraction = fraction;
    }

    /** Returns the limit over the system's voltage. */
    public double fraction() {
        return fraction;
    }
}
