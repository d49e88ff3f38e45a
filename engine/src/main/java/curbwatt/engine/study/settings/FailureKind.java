package curbwatt.engine.study.settings;

/** Why a setting does not do, what says most about the setting first. */
public enum FailureKind {
    /** It can't be set: its trip level is not below its reclose level. */
    CANNOT_BE_SET,
    /** A cutoff opens in a phase in which none may. */
    NUISANCE_TRIP,
    /** The cutoff opens and closes more than twice in an hour. */
    CHATTER,
    /** A cutoff opens before circuits were held as long as was asked. */
    CUT_OFF_TOO_EARLY,
    /** Circuits are not held although no cutoff opens: loads drop out, or the voltage collapses. */
    LOADS_LOST,
    /** The engine would not start with the room that was asked. */
    WOULD_NOT_START,
    /** A battery is drained further than was asked. */
    CHARGE_TOO_LOW,
    /** A circuit gets less voltage than was asked. */
    VOLTAGE_TOO_LOW
}
