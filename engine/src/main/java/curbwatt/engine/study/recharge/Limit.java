package curbwatt.engine.study.recharge;

/** Why charge does not come back. */
public enum Limit {
    /** The engine does not start: nothing charges. */
    DOES_NOT_START,
    /** The alternator gives what it can, and the loads leave too little of it. */
    ALTERNATOR,
    /** The protection inside a pack refuses charge: it is too cold, too warm, or its voltage or current too high. */
    PACK_REFUSES,
    /** The alternator could give more; the battery does not take it at this voltage, or the link does not pass it. */
    ACCEPTANCE
}
