package curbwatt.engine.study.idle;

/** What the answer may depend on. */
public enum Lever {
    /** Hours for which the vehicle stands; by runs. */
    SCENE_HOURS,
    /** Output of the alternator at the low speed of its label; by runs. */
    ALTERNATOR_IDLE,
    /** Price of fuel; by arithmetic. */
    FUEL_PRICE,
    /** Scenes in a year; by arithmetic. */
    SCENES_PER_YEAR,
    /** Price of the idle control; by arithmetic. */
    IDLE_CONTROL_PRICE,
    /** Price of the automatic start; by arithmetic. */
    AUTOMATIC_START_PRICE
}
