package curbwatt.engine.study.settings;

/** A way to go from a setting. */
public enum Side {
    /** A lower trip level. */
    LOWER_LEVEL(-1, 0),
    /** A higher trip level. */
    HIGHER_LEVEL(1, 0),
    /** A shorter delay. */
    SHORTER_DELAY(0, -1),
    /** A longer delay. */
    LONGER_DELAY(0, 1);

    private final int levels;
    private final int delays;

    Side(int levels, int delays) {
        this.levels = levels;
        this.delays = delays;
    }

    /** Steps in the list of trip levels. */
    public int levels() {
        return levels;
    }

    /** Steps in the list of delays. */
    public int delays() {
        return delays;
    }
}
