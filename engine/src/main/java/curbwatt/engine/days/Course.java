package curbwatt.engine.days;

/** What becomes of the batteries over the days. */
public enum Course {
    /** The engine starts whenever it should, no battery's charge goes down, and no cutoff has to act any more. */
    KEEPS_UP,
    /**
     * The engine starts whenever it should, and no battery's charge goes down, because a cutoff takes equipment away: it
     * still does so in the second half of the days.
     */
    HELD_BY_CUTOFF,
    /** The engine starts whenever it should, but a battery's charge goes down week by week. */
    CREEPS_DOWN,
    /** On some day the engine should start and does not. */
    DOES_NOT_START,
    /** The engine starts whenever it should; there are too few days to say where the charge is going. */
    TOO_SHORT
}
