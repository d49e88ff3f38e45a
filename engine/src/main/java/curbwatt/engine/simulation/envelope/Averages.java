package curbwatt.engine.simulation.envelope;

import curbwatt.engine.simulation.network.SenseTap;
import curbwatt.engine.simulation.part.OperatingPoint;
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

    /** Adds a point that holds for a share of the time. */
    void add(OperatingPoint point, double share) {
        mean.add(point, share);
        residualA = Math.max(residualA, point.residualA());
        double batteryA = share * point.starter.batteryA();
        gaveA += Math.max(0, batteryA);
        tookA += Math.max(0, -batteryA);
        double auxiliaryA = share * point.equipment.batteryA();
        auxiliaryGaveA += Math.max(0, auxiliaryA);
        auxiliaryTookA += Math.max(0, -auxiliaryA);
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
