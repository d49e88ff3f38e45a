package curbwatt.engine.powertrain;

/** What the engine does in a phase. */
public enum EngineMode {
    /** On the road; the alternator is driven. */
    DRIVING,
    /** Standing with the engine running; the alternator is driven. */
    IDLING,
    /** Standing with the engine off, equipment in use. */
    OFF,
    /** Parked and locked: key-off draw alone, as far as the stages say so. */
    PARKED;

    /** Whether the engine turns. */
    public boolean isRunning() {
        return this == DRIVING || this == IDLING;
    }
}
