package curbwatt.engine.simulation.record;

/** Keeps nothing, and need not be shown anything. */
record NoRecorder() implements Recorder {

    @Override
    public void record(Step step) {}

    @Override
    public boolean isWatching() {
        return false;
    }
}
