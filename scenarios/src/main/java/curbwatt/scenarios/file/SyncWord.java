package curbwatt.scenarios.file;

/** How several heads alike flash together, as the file spells it. */
public enum SyncWord {
    /** All at once. */
    SIMULTANEOUS("simultaneous"),
    /** Half of them shifted by half a period. */
    ALTERNATING("alternating"),
    /** Each by a clock of its own, slightly apart from the others. */
    OWN_CLOCKS("own clocks");

    private final String word;

    SyncWord(String word) {
        this.word = word;
    }

    @Override
    public String toString() {
        return word;
    }
}
