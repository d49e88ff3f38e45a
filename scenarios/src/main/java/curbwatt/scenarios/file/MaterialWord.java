package curbwatt.scenarios.file;

/** What a wire is made of, as the file spells it. */
public enum MaterialWord {
    /** Annealed copper. */
    COPPER("copper"),
    /** Aluminium. */
    ALUMINIUM("aluminium");

    private final String word;

    MaterialWord(String word) {
        this.word = word;
    }

    @Override
    public String toString() {
        return word;
    }
}
