package curbwatt.scenarios.file;

/** How a load's current follows the voltage, as the file spells it. */
public enum BehaviourWord {
    /** The lower the voltage, the more current: switching drivers, computers, radios. */
    CONSTANT_POWER("constant power", -1),
    /** Linear LED heads. */
    CONSTANT_CURRENT("constant current", 0),
    /** Heaters, motors as far as they go. */
    RESISTIVE("resistive", 1),
    /** Incandescent lamps: the filament's resistance grows with its heat. Common practice, no published source. */
    FILAMENT("filament", 0.55);

    private final String word;
    private final double exponent;

    BehaviourWord(String word, double exponent) {
        this.word = word;
        this.exponent = exponent;
    }

    /** Returns the exponent of the current in voltage. */
    public double exponent() {
        return exponent;
    }

    @Override
    public String toString() {
        return word;
    }
}
