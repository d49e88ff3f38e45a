package curbwatt.engine.simulation.record;

import curbwatt.engine.result.WaveformPoint;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Keeps the corners of every step that begins or ends in a short window of the run. */
public final class WaveformRecorder implements Recorder {

    private final double fromS;
    private final double toS;
    private final List<WaveformPoint> points = new ArrayList<>();

    /** Makes a recorder for the window from {@code fromS} to {@code toS}, since the scene's start (s). */
    public WaveformRecorder(double fromS, double toS) {
        this.fromS = fromS;
        this.toS = toS;
    }

    @Override
    public void record(Step step) {
        if (step.endS() <= fromS || step.startS() >= toS) {
            return;
        }
        double loadA = 0;
        for (int c = 0; c < step.circuits(); c++) {
            loadA += step.circuitA(c);
        }
        boolean two = step.hasEquipmentNode();
        points.add(new WaveformPoint(
                step.startS(),
                step.nodeStartV(),
                step.sensedStartV(),
                step.readingStartV(),
                loadA,
                two ? OptionalDouble.of(step.equipmentStartV()) : OptionalDouble.empty()));
        points.add(new WaveformPoint(
                step.endS(),
                step.nodeEndV(),
                step.sensedEndV(),
                step.readingEndV(),
                loadA,
                two ? OptionalDouble.of(step.equipmentEndV()) : OptionalDouble.empty()));
    }

    @Override
    public double edgesFromS(double timeS) {
        return timeS < toS ? Math.max(fromS, timeS) : Double.POSITIVE_INFINITY;
    }

    /** The corners so far, two for each step: its start and its end. */
    public List<WaveformPoint> points() {
        return List.copyOf(points);
    }
}
