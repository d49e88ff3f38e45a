package curbwatt.scenarios.file;

/** How draws are spread over what is possible, as the file spells it. */
public enum SamplingWord {
    /** Evenly, by a Sobol sequence. */
    SOBOL("sobol"),
    /** Each at random. */
    SEEDED("seeded");

    private final String word;

    SamplingWord(String word) {
        this.word = word;
    }

    @Override
    public String toString() {
        return word;
    }
}
