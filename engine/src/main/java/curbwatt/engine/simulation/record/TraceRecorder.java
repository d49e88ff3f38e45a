package curbwatt.engine.simulation.record;

import curbwatt.engine.quantity.Require;
import curbwatt.engine.result.Trace;
import curbwatt.engine.result.TraceRow;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Keeps a {@link Trace} at a chosen spacing, with the extremes and means between its lines. */
public final class TraceRecorder implements Recorder {

    private final double spacingS;
    private final List<String> circuits;
    private final List<String> cutoffs;
    private final List<SensedLine> sensed;
    private final List<TraceRow> rows = new ArrayList<>();
    private final double[] circuitAs;
    private double lineStartS;
    private double coveredS;
    private double nodeMinV;
    private double nodeMaxV;
    private double nodeVs;
    private double batteryAs;
    private final EquipmentLine equipment = new EquipmentLine();
    private double alternatorAs;
    private TraceRow tail;

    /**
     * Makes a recorder that leaves out what cutoffs sense.
     *
     * @param spacingS time between lines (s), 0.01 … one day
     * @param circuits names of the vehicle's circuits, in its order
     */
    public TraceRecorder(double spacingS, List<String> circuits) {
        this(spacingS, circuits, List.of());
    }

    /**
     * Makes a recorder.
     *
     * @param spacingS time between lines (s), 0.01 … one day
     * @param circuits names of the vehicle's circuits, in its order
     * @param cutoffs names of its cutoffs, in its order
     */
    public TraceRecorder(double spacingS, List<String> circuits, List<String> cutoffs) {
        this.spacingS = Require.inside("spacingS", spacingS, 0.01, 86400, "s");
        this.circuits = List.copyOf(circuits);
        this.cutoffs = List.copyOf(cutoffs);
        sensed = IntStream.range(0, cutoffs.size()).mapToObj(SensedLine::new).toList();
        circuitAs = new double[circuits.size()];
        clear();
    }

    @Override
    public void record(Step step) {
        if (tail == null) {
            add(step, 0, 0);
            rows.add(line(step, step.startS(), 0));
            clear();
        }
        double fromS = step.startS();
        double nextS = nextLineS(lineStartS);
        while (step.endS() >= nextS) {
            add(step, fromS, nextS);
            rows.add(line(step, nextS, share(step, nextS)));
            clear();
            lineStartS = nextS;
            fromS = nextS;
            nextS = nextLineS(lineStartS);
        }
        if (step.endS() > fromS) {
            add(step, fromS, step.endS());
        }
        tail = coveredS > 0 ? line(step, step.endS(), 1) : rows.get(rows.size() - 1);
    }

    @Override
    public double nextLineS(double timeS) {
        // a hair: a time that a line was drawn at may lie just before it
        return spacingS * (Math.floor(timeS / spacingS + 1e-9) + 1);
    }

    private void clear() {
        coveredS = 0;
        nodeMinV = Double.POSITIVE_INFINITY;
        nodeMaxV = Double.NEGATIVE_INFINITY;
        nodeVs = 0;
        sensed.forEach(SensedLine::clear);
        batteryAs = 0;
        alternatorAs = 0;
        equipment.clear();
        Arrays.fill(circuitAs, 0);
    }

    private static double share(Step step, double timeS) {
        return (timeS - step.startS()) / (step.endS() - step.startS());
    }

    private static double at(double startV, double endV, double share) {
        return startV + share * (endV - startV);
    }

    private void add(Step step, double fromS, double toS) {
        double lengthS = toS - fromS;
        double fromShare = share(step, fromS);
        double toShare = share(step, toS);
        boolean straight = step.isStraight();
        double fromV = straight ? at(step.nodeStartV(), step.nodeEndV(), fromShare) : step.nodeLowestV();
        double toV = straight ? at(step.nodeStartV(), step.nodeEndV(), toShare) : step.nodeHighestV();
        nodeMinV = Math.min(nodeMinV, Math.min(fromV, toV));
        nodeMaxV = Math.max(nodeMaxV, Math.max(fromV, toV));
        for (SensedLine line : sensed) {
            line.add(step, fromShare, toShare);
        }
        coveredS += lengthS;
        nodeVs += lengthS * (straight ? 0.5 * (fromV + toV) : step.nodeMeanV());
        batteryAs += lengthS * step.batteryA();
        alternatorAs += lengthS * step.alternatorA();
        if (step.hasEquipmentNode()) {
            equipment.add(step, fromShare, toShare, lengthS);
        }
        for (int c = 0; c < circuitAs.length; c++) {
            circuitAs[c] += lengthS * step.circuitA(c);
        }
    }

    private TraceRow line(Step step, double timeS, double share) {
        boolean instant = coveredS == 0;
        List<Double> circuitMeanA = new ArrayList<>(circuitAs.length);
        for (int c = 0; c < circuitAs.length; c++) {
            circuitMeanA.add(instant ? step.circuitA(c) : circuitAs[c] / coveredS);
        }
        double nodeV = at(step.nodeStartV(), step.nodeEndV(), share);
        return new TraceRow(
                timeS,
                nodeV,
                nodeMinV,
                instant ? nodeV : nodeVs / coveredS,
                nodeMaxV,
                sensed.stream().map(line -> line.sample(step, share)).toList(),
                instant ? step.batteryA() : batteryAs / coveredS,
                instant ? step.alternatorA() : alternatorAs / coveredS,
                List.copyOf(circuitMeanA),
                at(step.chargeStartFraction(), step.chargeEndFraction(), share),
                step.batteryC(),
                step.hasEquipmentNode() ? Optional.of(equipment.sample(step, share, coveredS)) : Optional.empty());
    }

    /** The trace so far; its last line ends where the last step did. */
    public Trace trace() {
        List<TraceRow> all = new ArrayList<>(rows);
        if (tail != null && tail.timeS() > all.get(all.size() - 1).timeS()) {
            all.add(tail);
        }
        return new Trace(spacingS, circuits, cutoffs, all);
    }
}
