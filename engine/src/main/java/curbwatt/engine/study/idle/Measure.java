package curbwatt.engine.study.idle;

/** By what ways that serve are told apart: the first of these that is known. */
public enum Measure {
    /** Money in a year. */
    MONEY,
    /** Fuel in a scene. */
    FUEL,
    /** Hours of the engine in a scene. */
    ENGINE_HOURS
}
