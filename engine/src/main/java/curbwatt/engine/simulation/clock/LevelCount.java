package curbwatt.engine.simulation.clock;

/** Something that counts how long a voltage has been beyond a level without a break, and acts after a delay. */
public interface LevelCount {

    /** Whether the level lies between two voltages. */
    boolean isWithin(double lowestV, double highestV);

    /** Whether no voltage between two is counted. */
    boolean isInterruptedBy(double lowestV, double highestV);

    /** How long the voltage has been beyond the level without a break (s). */
    double countedS();

    /** How long it has to be (s). */
    double delayS();
}
