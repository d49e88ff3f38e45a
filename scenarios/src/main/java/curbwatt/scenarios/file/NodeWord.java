package curbwatt.scenarios.file;

/** A node of the vehicle, as the file spells it. */
public enum NodeWord {
    /** Starter battery, alternator, starter motor. */
    STARTER("starter"),
    /** Auxiliary battery, behind the link. */
    EQUIPMENT("equipment");

    private final String word;

    NodeWord(String word) {
        this.word = word;
    }

    @Override
    public String toString() {
        return word;
    }
}
