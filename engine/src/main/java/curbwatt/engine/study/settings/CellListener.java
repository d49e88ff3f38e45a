package curbwatt.engine.study.settings;

/** Hears of each setting as soon as its run is done. Called by one thread at a time, in no particular order. */
public interface CellListener {

    /** A setting was run. */
    void judged(Cell cell);

    /**
     * More is known of a setting that works.
     *
     * @param room it has at least this much room, in multiples of the spread
     */
    default void roomed(Cell cell, double room) {}

    /** Hears nothing. */
    static CellListener none() {
        return cell -> {};
    }
}
