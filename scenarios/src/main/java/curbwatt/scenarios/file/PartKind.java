package curbwatt.scenarios.file;

/** What a catalogue part is; the words are those of the file's keys. */
public enum PartKind {
    /** A battery by its label. */
    BATTERY("battery"),
    /** An alternator by its label or table. */
    ALTERNATOR("alternator"),
    /** A load. */
    LOAD("load"),
    /** A starter. */
    STARTER("starter"),
    /** A link between two batteries. */
    LINK("link");

    private final String word;

    PartKind(String word) {
        this.word = word;
    }

    @Override
    public String toString() {
        return word;
    }
}
