package curbwatt.engine.simulation;

/** How flashing loads are followed. */
public enum Fidelity {
    /**
     * In long steps over many flashes for as long as nothing else switches, edge by edge near every event. Trip times within
     * 1 s or 0.1 %, voltages within 2 mV of {@link #RESOLVED}, at a small part of the time.
     */
    ENVELOPE,
    /** Edge by edge throughout: the reference, and some hundred times as slow. */
    RESOLVED
}
