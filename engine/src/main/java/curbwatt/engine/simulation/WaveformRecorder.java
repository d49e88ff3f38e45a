package curbwatt.engine.simulation;

import curbwatt.engine.result.WaveformPoint;
import java.util.List;

/** Keeps every step's corners in a short window of the run. */
public final class WaveformRecorder implements Recorder {

    private final double fromS;
    private double toS;

    /** Makes a recorder for the window from {@code fromS} to {@code toS}, since the scene's start (s). */
    public WaveformRecorder(double fromS, double toS) {
        this.fromS = fromS;
        this.toS = toS;
    }

    @Override
    public void record(Step step) {
        toS = Math.max(fromS, step.endS());
    }

    /** The corners so far, two for each step. */
    public List<WaveformPoint> points() {
        return toS < fromS ? null : List.of();
    }
}
