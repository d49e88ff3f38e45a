package curbwatt.engine.simulation.record;

/**
 * Watches a run, step by step, and keeps what it wants; it can't change anything.
 *
 * <p>A study keeps nothing and reads the {@link curbwatt.engine.result.RunResult}; a report keeps a trace.
 */
public interface Recorder {

    /** Called once for each accepted step, in order of time. The step is only valid during the call. */
    void record(Step step);

    /** Keeps nothing. */
    static Recorder none() {
        return step -> {};
    }

    /** Hands each step to both. */
    default Recorder and(Recorder other) {
        return step -> {
            record(step);
            other.record(step);
        };
    }
}
