package curbwatt.scenarios.file;

/** What an engine burns, as the file spells it. */
public enum FuelWord {
    /** Petrol, naturally aspirated. */
    PETROL("petrol"),
    /** Petrol, turbocharged. */
    PETROL_TURBO("petrol turbo"),
    /** Diesel. */
    DIESEL("diesel");

    private final String word;

    FuelWord(String word) {
        this.word = word;
    }

    @Override
    public String toString() {
        return word;
    }
}
