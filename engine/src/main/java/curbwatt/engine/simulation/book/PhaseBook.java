package curbwatt.engine.simulation.book;

import curbwatt.engine.result.PhaseSummary;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.simulation.part.NodePoint;
import curbwatt.engine.simulation.part.OperatingPoint;
import curbwatt.engine.simulation.part.Parabola;
import java.util.OptionalDouble;

/** Adds up one phase. */
public final class PhaseBook {

    private final Phase phase;
    private final double startS;
    private final boolean engineRuns;
    private final double startCharge;
    private final OptionalDouble alternatorCapacityA;
    private double loadAs;
    private double alternatorAs;
    private double batteryAs;
    private double lowestV = Double.POSITIVE_INFINITY;
    private double highestV = Double.NEGATIVE_INFINITY;

    public PhaseBook(
            Phase phase, double startS, boolean engineRuns, double startCharge, OptionalDouble alternatorCapacityA) {
        this.phase = phase;
        this.startS = startS;
        this.engineRuns = engineRuns;
        this.startCharge = startCharge;
        this.alternatorCapacityA = alternatorCapacityA;
    }

    void add(double lengthS, OperatingPoint start, OperatingPoint end) {
        double half = 0.5 * lengthS;
        loadAs += half * (start.loadA() + end.loadA());
        alternatorAs += half * (start.starter.sourceA + end.starter.sourceA);
        batteryAs += half * (start.batteriesA() + end.batteriesA());
    }

    /** Whether an instant on the parabola through three might be one to note. */
    boolean mayNote(NodePoint start, NodePoint middle, NodePoint end) {
        return Parabola.floor(start.nodeV, middle.nodeV, end.nodeV) < lowestV
                || Parabola.ceiling(start.nodeV, middle.nodeV, end.nodeV) > highestV;
    }

    /** Notes an instant. */
    void note(OperatingPoint point) {
        lowestV = Math.min(lowestV, point.starter.nodeV);
        highestV = Math.max(highestV, point.starter.nodeV);
    }

    public PhaseSummary summary(double endCharge) {
        double lengthS = phase.durationS();
        return new PhaseSummary(
                phase.name(),
                startS,
                lengthS,
                engineRuns,
                loadAs / lengthS,
                alternatorAs / lengthS,
                batteryAs / lengthS,
                lowestV,
                highestV,
                startCharge,
                endCharge,
                alternatorCapacityA);
    }
}
