package curbwatt.engine.simulation.record;

/**
 * Watches a run, step by step, and keeps what it wants; it can't change anything.
 *
 * <p>A study keeps nothing and reads the {@link curbwatt.engine.result.RunResult}; a report keeps a trace.
 */
public interface Recorder {

    /** Called once for each accepted step, in order of time. The step is only valid during the call. */
    void record(Step step);

    /**
     * Time after one at which a step has to end, whatever its length, because this recorder draws a line there (s);
     * infinity: none.
     */
    default double nextLineS(double timeS) {
        return Double.POSITIVE_INFINITY;
    }

    /** From which time on, not before one, each flash has to be a step of its own (s); infinity: never again. */
    default double edgesFromS(double timeS) {
        return Double.POSITIVE_INFINITY;
    }

    /** Keeps nothing. */
    static Recorder none() {
        return new NoRecorder();
    }

    /** Whether it has to be shown the steps at all. */
    default boolean isWatching() {
        return true;
    }

    /** Hands each step to both. */
    default Recorder and(Recorder other) {
        return new BothRecorders(this, other);
    }
}
