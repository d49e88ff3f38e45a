package curbwatt.scenarios.file;

/** What closes an open cutoff again, as the file spells it. */
public enum RecloseWord {
    /** A voltage, held for a time. */
    ABOVE_VOLTAGE("above voltage"),
    /** The engine runs. */
    ENGINE_RUNNING("engine running"),
    /** Somebody presses the switch: never within a scene. */
    BY_HAND("by hand");

    private final String word;

    RecloseWord(String word) {
        this.word = word;
    }

    @Override
    public String toString() {
        return word;
    }
}
