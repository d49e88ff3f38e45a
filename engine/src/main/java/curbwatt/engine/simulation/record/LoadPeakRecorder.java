package curbwatt.engine.simulation.record;

/** Keeps the largest current of all circuits together. */
public final class LoadPeakRecorder implements Recorder {

    private double peakA;

    @Override
    public void record(Step step) {
        peakA = Math.max(peakA, step.loadPeakA());
    }

    /** The largest current so far (A). */
    public double peakA() {
        return peakA;
    }
}
