package curbwatt.engine.simulation.envelope;

import curbwatt.engine.simulation.device.Actions;
import curbwatt.engine.simulation.device.CalmWatch;
import curbwatt.engine.simulation.device.CutoffState;
import curbwatt.engine.simulation.network.SenseTap;
import curbwatt.engine.simulation.part.NodePoint;
import curbwatt.engine.simulation.part.OperatingPoint;
import curbwatt.engine.simulation.part.Parabola;
import curbwatt.engine.vehicle.BusNode;
import java.util.Arrays;
import java.util.List;

/**
 * The lowest and highest of everything that devices see in a long step, and what their filters make of it.
 *
 * <p>Each quantity of each combination runs on a parabola. Its ends and middle are widened by the furthest that the parabola
 * may stand out beyond them, and by the tolerance of the step.
 */
final class Bounds {

    /** By how much a filter's extremes may be off where their drift is taken as that of the mean, as a share of the drift. */
    private static final double DRIFT_SHARE = 0.1;

    private final Actions actions;
    private final CalmWatch calm;
    private final Filter[] filters;
    private final OperatingPoint first;
    private final OperatingPoint middle;
    private final OperatingPoint end;
    private final Ripple ripple = new Ripple(BusNode.STARTER);
    private final Ripple equipmentRipple = new Ripple(BusNode.EQUIPMENT);
    /** How far a battery's state swings, as seen in its node's voltage (V). */
    private double swingV;
    /** By how much a voltage may be off its parabola (V). */
    private double marginV;
    /** Share of the part looked at at which the band of a filter's readings first meets a level. */
    private double meets;

    Bounds(Actions actions, CalmWatch calm, int circuits) {
        this.actions = actions;
        this.calm = calm;
        first = new OperatingPoint(circuits);
        middle = new OperatingPoint(circuits);
        end = new OperatingPoint(circuits);
        filters = actions.cutoffs().stream()
                .map(cutoff -> cutoff.isFiltered() ? new Filter(cutoff.settings.filterTimeConstantS()) : null)
                .toArray(Filter[]::new);
    }

    /** What a cutoff's filter makes of the step; null: it has none. */
    Filter filter(int cutoff) {
        return filters[cutoff];
    }

    void begin(FlashPattern pattern) {
        for (Filter filter : filters) {
            if (filter != null) {
                filter.begin(pattern);
            }
        }
    }

    private void lookAtSwing(LongStep step) {
        swingV = ripple.swingV(step);
        if (step.states().start.areTwo()) {
            swingV = Math.max(swingV, equipmentRipple.swingV(step));
        }
    }

    /** Looks at a step up to a share of it; first at all of it. */
    void look(LongStep step, double share) {
        if (share == 1) {
            lookAtSwing(step);
        }
        marginV = step.toleranceV() + 2 * swingV;
        meets = 1;
        clear(calm.lowest, Double.POSITIVE_INFINITY);
        clear(calm.highest, Double.NEGATIVE_INFINITY);
        for (int k = 0; k < step.pattern().size(); k++) {
            include(step.start().points[k], pointAt(step, k, 0.5 * share, middle), pointAt(step, k, share, end));
        }
        if (calm.fuses.isPossible(calm.highest)) {
            lookAtFuses(step, share);
        }
        List<CutoffState> cutoffs = actions.cutoffs();
        for (int i = 0; i < filters.length; i++) {
            double errorV = cutoffs.get(i).settings.sensorErrorV();
            SenseTap tap = actions.tap(i);
            double lowV = tap.voltageV(calm.lowest) + errorV;
            double highV = tap.voltageV(calm.highest) + errorV;
            if (filters[i] == null) {
                calm.lowestReadingV[i] = lowV;
                calm.highestReadingV[i] = highV;
            } else {
                filter(i, step, share, tap, errorV);
            }
        }
    }

    private void lookAtFuses(LongStep step, double share) {
        calm.fuses.clear();
        for (int k = 0; k < step.pattern().size(); k++) {
            calm.fuses.include(
                    step.start().points[k], pointAt(step, k, 0.5 * share, middle), pointAt(step, k, share, end));
        }
    }

    /** What holds in a combination at a share of the step: what was solved for, or what is filled in. */
    private static OperatingPoint pointAt(LongStep step, int combination, double share, OperatingPoint between) {
        if (share == 0) {
            return step.start().points[combination];
        }
        if (share == 0.5) {
            return step.middle().points[combination];
        }
        if (share == 1) {
            return step.end().points[combination];
        }
        step.at(combination, share, between);
        return between;
    }

    private void filter(int i, LongStep step, double share, SenseTap tap, double errorV) {
        Filter filter = filters[i];
        CutoffState cutoff = actions.cutoffs().get(i);
        double heldV = heldV(i, step);
        // what goes in bounds what comes out
        double leastV = Math.min(heldV, tap.voltageV(calm.lowest) + errorV);
        double mostV = Math.max(heldV, tap.voltageV(calm.highest) + errorV);
        if (!cutoff.comparesWithin(leastV, mostV)) {
            calm.lowestReadingV[i] = leastV;
            calm.highestReadingV[i] = mostV;
            return;
        }
        if (!step.pattern().repeats()) {
            filter.follow(step, 0, share, tap, errorV, heldV);
            calm.lowestReadingV[i] = filter.lowestV() - marginV;
            calm.highestReadingV[i] = filter.highestV() + marginV;
            return;
        }
        filter.look(step, 0, tap, errorV);
        double lowV = filter.lowestV();
        double highV = filter.highestV();
        filter.look(step, 0.5 * share, tap, errorV);
        double middleLowV = filter.lowestV();
        double middleHighV = filter.highestV();
        filter.look(step, share, tap, errorV);
        double endLowV = filter.lowestV();
        double endHighV = filter.highestV();
        double bentV = Math.abs(middleLowV - lowV) + Math.abs(endLowV - Math.min(lowV, middleLowV));
        double bandV = marginV + DRIFT_SHARE * bentV;
        double offV = heldV - filter.settledV(step, 0, tap, errorV);
        calm.lowestReadingV[i] = Math.min(lowV, Math.min(middleLowV, endLowV)) - bandV + Math.min(0, offV);
        calm.highestReadingV[i] = Math.max(highV, Math.max(middleHighV, endHighV)) + bandV + Math.max(0, offV);
        for (int t = 0; t < cutoff.pendingTimers(); t++) {
            double levelV = cutoff.pendingTimer(t).levelV();
            double marginUpV = marginV + Math.max(0, offV);
            double marginDownV = marginV - Math.min(0, offV);
            meets = Math.min(meets, meets(levelV + marginDownV - lowV, middleLowV - lowV, endLowV - lowV));
            meets = Math.min(meets, meets(levelV - marginUpV - highV, middleHighV - highV, endHighV - highV));
        }
    }

    /** Share at which what drifts by so much till the middle and the end comes to a level that is so far away. */
    private static double meets(double awayV, double middleDriftV, double endDriftV) {
        double wider = 1 + DRIFT_SHARE;
        return Parabola.zero(-awayV, wider * middleDriftV - awayV, wider * endDriftV - awayV, 0);
    }

    /** Share of the part looked at at which the readings of a filter first come near a level, as far as is known; 1: nowhere. */
    double meets() {
        return meets;
    }

    /** By how much a voltage may be off its parabola in the step looked at (V). */
    double marginV() {
        return marginV;
    }

    /** How far a battery's state swings within the step looked at, as seen in its node's voltage (V). */
    double swingV() {
        return swingV;
    }

    private static void clear(OperatingPoint point, double value) {
        clear(point.starter, value);
        clear(point.equipment, value);
        Arrays.fill(point.farV, value);
        Arrays.fill(point.circuitA, value);
    }

    private static void clear(NodePoint point, double value) {
        point.nodeV = value;
        point.mainA = value;
    }

    private void include(OperatingPoint start, OperatingPoint middle, OperatingPoint end) {
        include(start.starter, middle.starter, end.starter, calm.lowest.starter, calm.highest.starter);
        include(start.equipment, middle.equipment, end.equipment, calm.lowest.equipment, calm.highest.equipment);
        for (int c = 0; c < start.farV.length; c++) {
            double lowV = Parabola.floor(start.farV[c], middle.farV[c], end.farV[c]) - marginV;
            double highV = Parabola.ceiling(start.farV[c], middle.farV[c], end.farV[c]) + marginV;
            double highA = Parabola.ceiling(start.circuitA[c], middle.circuitA[c], end.circuitA[c]);
            calm.lowest.farV[c] = Math.min(calm.lowest.farV[c], lowV);
            calm.highest.farV[c] = Math.max(calm.highest.farV[c], highV);
            calm.highest.circuitA[c] = Math.max(calm.highest.circuitA[c], highA);
        }
    }

    private void include(NodePoint start, NodePoint middle, NodePoint end, NodePoint lowest, NodePoint highest) {
        double lowV = Parabola.floor(start.nodeV, middle.nodeV, end.nodeV) - marginV;
        double highV = Parabola.ceiling(start.nodeV, middle.nodeV, end.nodeV) + marginV;
        double lowA = Parabola.floor(start.batteryA(), middle.batteryA(), end.batteryA());
        double highA = Parabola.ceiling(start.batteryA(), middle.batteryA(), end.batteryA());
        lowest.nodeV = Math.min(lowest.nodeV, lowV);
        highest.nodeV = Math.max(highest.nodeV, highV);
        lowest.mainA = Math.min(lowest.mainA, lowA);
        highest.mainA = Math.max(highest.mainA, highA);
    }

    /** What cutoffs read after a part of the step, from one share to another. */
    void readAt(LongStep step, double fromShare, double toShare) {
        step.at(step.startS() + toShare * step.lengthS() - Envelope.BEFORE_EDGE_S, end);
        for (int i = 0; i < filters.length; i++) {
            double errorV = actions.cutoffs().get(i).settings.sensorErrorV();
            if (filters[i] == null) {
                calm.endReadingV[i] = actions.tap(i).voltageV(end) + errorV;
            } else {
                calm.endReadingV[i] = filters[i].endV(step, fromShare, toShare, actions.tap(i), errorV, heldV(i, step));
            }
        }
    }

    /** What a cutoff reads before the step, or at its start if it has not read anything (V). */
    private double heldV(int i, LongStep step) {
        CutoffState cutoff = actions.cutoffs().get(i);
        if (!Double.isNaN(cutoff.filteredV())) {
            return cutoff.filteredV();
        }
        step.at(step.startS(), first);
        return actions.tap(i).voltageV(first) + cutoff.settings.sensorErrorV();
    }
}
