package curbwatt.engine.simulation.envelope;

import curbwatt.engine.simulation.network.SenseTap;
import curbwatt.engine.simulation.part.OperatingPoint;
import curbwatt.engine.simulation.part.Parabola;
import java.util.List;

/** Means and extremes of the combinations of lit loads in a part of a long step. */
final class Averages {

    final OperatingPoint mean;
    final Band node = new Band();
    final List<Band> sensed;
    final Band equipment = new Band();
    private final List<SenseTap> taps;
    private double loadPeakA;
    private double residualA;
    private double gaveA;
    private double tookA;
    private double auxiliaryGaveA;
    private double auxiliaryTookA;

    Averages(int circuits, List<SenseTap> taps) {
        mean = new OperatingPoint(circuits);
        this.taps = taps;
        sensed = taps.stream().map(tap -> new Band()).toList();
    }

    void clear() {
        mean.clear();
        node.clear();
        sensed.forEach(Band::clear);
        equipment.clear();
        loadPeakA = 0;
        residualA = 0;
        gaveA = 0;
        tookA = 0;
        auxiliaryGaveA = 0;
        auxiliaryTookA = 0;
    }

    /** Adds the currents of the batteries at an instant that stands for a share of the time (A). */
    void addBatteries(double starterA, double auxiliaryA, double share) {
        gaveA += share * Math.max(0, starterA);
        tookA += share * Math.max(0, -starterA);
        auxiliaryGaveA += share * Math.max(0, auxiliaryA);
        auxiliaryTookA += share * Math.max(0, -auxiliaryA);
    }

    /** Adds the mean between three solutions to the mean of all, for a share of the time. */
    void add(Parabola at, OperatingPoint start, OperatingPoint middle, OperatingPoint end, double share) {
        mean.addBetween(at, start, middle, end, share);
        residualA = Math.max(residualA, Math.max(start.residualA(), Math.max(middle.residualA(), end.residualA())));
    }

    /** Whether an instant on the parabola through three solutions might be one to note. */
    boolean mayNote(OperatingPoint start, OperatingPoint middle, OperatingPoint end) {
        boolean may = node.mayNote(start.starter.nodeV, middle.starter.nodeV, end.starter.nodeV)
                || equipment.mayNote(start.equipment.nodeV, middle.equipment.nodeV, end.equipment.nodeV)
                || Parabola.ceiling(start.loadA(), middle.loadA(), end.loadA()) > loadPeakA;
        for (int i = 0; !may && i < taps.size(); i++) {
            SenseTap tap = taps.get(i);
            may = sensed.get(i).mayNote(tap.voltageV(start), tap.voltageV(middle), tap.voltageV(end));
        }
        return may;
    }

    /** Notes an instant that there was, between three solutions. */
    void note(Parabola at, OperatingPoint start, OperatingPoint middle, OperatingPoint end) {
        loadPeakA = Math.max(loadPeakA, at.through(start.loadA(), middle.loadA(), end.loadA()));
        node.note(at.through(start.starter.nodeV, middle.starter.nodeV, end.starter.nodeV));
        for (int i = 0; i < taps.size(); i++) {
            SenseTap tap = taps.get(i);
            sensed.get(i).note(at.through(tap.voltageV(start), tap.voltageV(middle), tap.voltageV(end)));
        }
        equipment.note(at.through(start.equipment.nodeV, middle.equipment.nodeV, end.equipment.nodeV));
    }

    /** Notes an instant that there was. */
    void note(OperatingPoint point) {
        loadPeakA = Math.max(loadPeakA, point.loadA());
        node.note(point.starter.nodeV);
        for (int i = 0; i < taps.size(); i++) {
            sensed.get(i).note(taps.get(i).voltageV(point));
        }
        equipment.note(point.equipment.nodeV);
    }

    /** Largest current of all circuits together (A). */
    double loadPeakA() {
        return loadPeakA;
    }

    double residualA() {
        return residualA;
    }

    /** What the starter battery gave, as a mean over the time (A). */
    double gaveA() {
        return gaveA;
    }

    /** What the starter battery took, as a mean over the time (A). */
    double tookA() {
        return tookA;
    }

    double auxiliaryGaveA() {
        return auxiliaryGaveA;
    }

    double auxiliaryTookA() {
        return auxiliaryTookA;
    }
}
