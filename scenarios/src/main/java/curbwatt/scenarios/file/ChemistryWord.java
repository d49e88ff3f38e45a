package curbwatt.scenarios.file;

/** How a battery's electrolyte is held, as the file spells it. */
public enum ChemistryWord {
    /** Liquid acid. */
    FLOODED("flooded"),
    /** Acid in an absorbent glass mat. */
    AGM("agm");

    private final String word;

    ChemistryWord(String word) {
        this.word = word;
    }

    @Override
    public String toString() {
        return word;
    }
}
