package curbwatt.engine.event;

/** The kinds of event; the subject of each is said in brackets. */
public enum EventKind {
    /** A phase of the scene began [phase]. */
    PHASE_BEGAN,
    /** The engine was started; the voltage is the lowest while cranking [phase]. */
    ENGINE_STARTED,
    /** The engine was switched off [phase]. */
    ENGINE_STOPPED,
    /** The idle control raised the engine's speed [idle control]. */
    IDLE_RAISED,
    /** The idle control let the engine's speed go back [idle control]. */
    IDLE_RELEASED,
    /**
     * Cranking voltage too low when the engine should have started: it stays off; the voltage is the lowest while
     * cranking [phase].
     */
    ENGINE_DID_NOT_START,
    /** The monitor's reading fell below its warning level [cutoff]. */
    WARNING_BEGAN,
    /** The monitor's reading is back above its warning level [cutoff]. */
    WARNING_ENDED,
    /** The contact opened on low voltage [cutoff]. */
    CUTOFF_TRIPPED,
    /** The contact opened because its run-time limit with the engine off was reached [cutoff]. */
    RUN_TIME_LIMIT_REACHED,
    /** The contact closed again [cutoff]. */
    CUTOFF_RECLOSED,
    /** A circuit's fuse opened [circuit]. */
    FUSE_OPENED,
    /** The protection inside a pack stopped its charge or discharge [battery, with the reason]. */
    PACK_STOPPED,
    /** The protection inside a pack let a reason go [battery, with the reason]. */
    PACK_RELEASED,
    /** The link between the batteries closed, or its charger started [link]. */
    LINK_CLOSED,
    /** The link between the batteries opened, or its charger stopped [link]. */
    LINK_OPENED,
    /** A load's voltage fell below its drop-out level and it fell silent [load]. */
    LOAD_DROPPED_OUT,
    /** A load that had dropped out draws current again [load]. */
    LOAD_RETURNED,
    /** From here on the battery would no longer crank the engine at the required voltage [battery]. */
    RESTART_MARGIN_LOST,
    /** The battery would crank the engine again [battery]. */
    RESTART_MARGIN_REGAINED,
    /** No operating point: constant-power loads ask for more than feed or battery can deliver [circuit or node]. */
    VOLTAGE_COLLAPSED,
    /** The scene ended [scene]. */
    SCENE_ENDED
}
