package curbwatt.engine.simulation.record;

/** Keeps the largest current of all circuits together. */
public final class LoadPeakRecorder implements Recorder {

    private double peakA;

    @Override
    public void record(Step step) {
        double loadA = 0;
        for (int c = 0; c < step.circuits(); c++) {
            loadA += step.circuitA(c);
        }
        peakA = Math.max(peakA, loadA);
    }

    @Override
    public double edgesFromS(double timeS) {
        // a mean over flashes has no peak
        return timeS;
    }

    /** The largest current so far (A). */
    public double peakA() {
        return peakA;
    }
}
