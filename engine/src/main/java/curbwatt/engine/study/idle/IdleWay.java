package curbwatt.engine.study.idle;

/** What the engine does while the vehicle stands. */
public enum IdleWay {
    /** It idles, and nothing acts on it. */
    IDLING(true),
    /** It idles, and a control raises its speed while the electrical system asks for it. */
    HIGH_IDLE(true),
    /** It is off, and a device starts it for the battery. */
    AUTOMATIC_START(false),
    /** It is off, and nothing starts it. */
    ENGINE_OFF(false);

    private final boolean runs;

    IdleWay(boolean runs) {
        this.runs = runs;
    }

    /** Whether the engine runs unless something stops it. */
    public boolean runs() {
        return runs;
    }
}
