package curbwatt.scenarios.file;

/** What the engine does, as the file spells it. */
public enum EngineWord {
    /** On the road. */
    DRIVING("driving", true),
    /** Standing, running. */
    IDLING("idling", true),
    /** Standing, off, equipment in use. */
    OFF("off", false),
    /** Parked and locked. */
    PARKED("parked", false);

    private final String word;
    private final boolean runs;

    EngineWord(String word, boolean runs) {
        this.word = word;
        this.runs = runs;
    }

    /** Whether the engine turns. */
    public boolean runs() {
        return runs;
    }

    @Override
    public String toString() {
        return word;
    }
}
