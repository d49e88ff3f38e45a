package curbwatt.scenarios.file;

/** How current comes back from a load, as the file spells it. */
public enum ReturnWord {
    /** A second wire of the same size. */
    WIRE("wire"),
    /** The vehicle's body. */
    CHASSIS("chassis");

    private final String word;

    ReturnWord(String word) {
        this.word = word;
    }

    @Override
    public String toString() {
        return word;
    }
}
