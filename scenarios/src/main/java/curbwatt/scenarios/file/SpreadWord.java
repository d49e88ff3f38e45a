package curbwatt.scenarios.file;

/** Shape of a distribution, as the file spells it. */
public enum SpreadWord {
    /** A bell, cut off at both ends. */
    NORMAL("normal"),
    /** Every value between the ends as likely as any other. */
    UNIFORM("uniform"),
    /** Straight up to the likeliest value and straight down again. */
    TRIANGULAR("triangular"),
    /** Always the likeliest value. */
    FIXED("fixed");

    private final String word;

    SpreadWord(String word) {
        this.word = word;
    }

    @Override
    public String toString() {
        return word;
    }
}
