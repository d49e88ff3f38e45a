package curbwatt.scenarios.file;

/** Make of a fuse, as the file spells it. */
public enum FuseWord {
    /** Ordinary blade fuse. */
    BLADE("blade"),
    /** Small blade fuse. */
    MINI("mini"),
    /** High-current blade fuse. */
    MAXI("maxi");

    private final String word;

    FuseWord(String word) {
        this.word = word;
    }

    @Override
    public String toString() {
        return word;
    }
}
