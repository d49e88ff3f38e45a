package curbwatt.engine.vehicle;

/** The nodes that circuits can hang on. */
public enum BusNode {
    /** Starter battery, alternator, starter motor. */
    STARTER,
    /** Auxiliary battery, behind the link. */
    EQUIPMENT
}
