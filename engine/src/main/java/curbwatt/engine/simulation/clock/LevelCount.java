package curbwatt.engine.simulation.clock;

/** Something that counts how long a voltage has been beyond a level without a break, and acts after a delay. */
public interface LevelCount {

    /** Whether a voltage is counted. */
    boolean isBeyond(double voltageV);

    /** Whether the level lies between two voltages. */
    default boolean isWithin(double lowestV, double highestV) {
        return isBeyond(lowestV) != isBeyond(highestV);
    }

    /** Whether no voltage between two is counted. */
    default boolean isInterruptedBy(double lowestV, double highestV) {
        return !isBeyond(lowestV) && !isBeyond(highestV);
    }

    /** How long the voltage has been beyond the level without a break (s). */
    double countedS();

    /** How long it has to be (s). */
    double delayS();
}
