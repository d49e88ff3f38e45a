package curbwatt.engine.simulation;

/** How flashing loads are followed. */
public enum Fidelity {
    /**
     * In long steps over many flashes for as long as nothing else switches, edge by edge near every event: what a run does
     * unless told otherwise. How near it comes to {@link #RESOLVED} stands in docs/model-envelope.md.
     */
    ENVELOPE,
    /** Edge by edge throughout: the reference. */
    RESOLVED
}
