package curbwatt.engine.simulation.envelope;

import curbwatt.engine.simulation.part.Batteries;
import curbwatt.engine.simulation.part.BatteryWork;
import curbwatt.engine.simulation.part.MeanCurrent;
import curbwatt.engine.simulation.part.NodePoint;
import curbwatt.engine.vehicle.BusNode;

/**
 * What a battery's state swings about its mean path within a cycle, as seen in its node's voltage.
 *
 * <p>A long step moves a battery with the mean current. In truth it runs ahead while more is drawn and falls back while less
 * is. Against the modes' time constants a flash is short, so that charge and bound charges only add up:
 *
 * <pre>
 *   dρ/dt = ∂V/∂q (I − Ī) + ∂V/∂x Σw (D − D̄)
 * </pre>
 *
 * <p>I is the current and D the drive of the combination then lit. Some 10 µV for 10 A in a clock of a second: the step of
 * the state alone, without it, would put a comparator's crossing into another flash.
 */
final class Ripple {

    private static final double SMALL_AH = 1e-3;
    private static final double SECONDS_PER_HOUR = 3600;

    private final BusNode node;
    private double[] slopeVPerS = new double[0];
    private double[] transfer = new double[0];
    private LongStep step;
    private double rippleV;

    /** The ripple of the battery at a node. */
    Ripple(BusNode node) {
        this.node = node;
    }

    /** Begins a step at its start, where the state is the true one. */
    void begin(LongStep next) {
        step = next;
        Batteries batteries = step.states().middle;
        if (node == BusNode.STARTER) {
            begin(step.middle(), batteries.starter(), step.middle().starter);
        } else {
            begin(step.middle(), batteries.auxiliary(), step.middle().auxiliary);
        }
    }

    /** How far it swings in a step (V). */
    double swingV(LongStep next) {
        begin(next);
        if (step.pattern().isSteady()) {
            return 0;
        }
        Segments told = step.telling();
        double swungV = 0;
        double lowestV = 0;
        double highestV = 0;
        for (int s = 0; s < told.size; s++) {
            swungV += slopeVPerS[told.combination[s]] * told.lengthS[s];
            lowestV = Math.min(lowestV, swungV);
            highestV = Math.max(highestV, swungV);
        }
        return highestV - lowestV;
    }

    private void begin(Stage middle, BatteryWork battery, MeanCurrent mean) {
        int size = middle.points.length;
        if (slopeVPerS.length != size) {
            slopeVPerS = new double[size];
            transfer = new double[size];
        }
        rippleV = 0;
        double removedAh = battery.removedAh();
        double boundAh = battery.totalBoundAh();
        double currentA = mean.sumA();
        double atV = battery.terminal().voltageV(removedAh, boundAh, currentA);
        double chargeV = battery.terminal().voltageV(removedAh + SMALL_AH, boundAh, currentA) - atV;
        double boundV = battery.terminal().voltageV(removedAh, boundAh + SMALL_AH, currentA) - atV;
        double weight = battery.totalWeight();
        for (int k = 0; k < size; k++) {
            NodePoint point = node == BusNode.STARTER ? middle.points[k].starter : middle.points[k].equipment;
            double driveA = point.mainA < 0 ? battery.chargingFactor() * point.mainA : point.mainA;
            slopeVPerS[k] = (chargeV * (point.mainA - mean.sumA()) + boundV * weight * (driveA - mean.driveA()))
                    / (SMALL_AH * SECONDS_PER_HOUR);
            double state = point.mainA < 0
                    ? battery.terminal().chargingState(removedAh, boundAh)
                    : battery.terminal().surfaceState(removedAh, boundAh);
            double batteryOhm = -battery.terminal().slopeVPerA(state, point.mainA);
            transfer[k] = point.stiffnessOhm / batteryOhm;
            if (!Double.isFinite(slopeVPerS[k]) || !(transfer[k] >= 0 && transfer[k] < 2)) {
                slopeVPerS[k] = 0;
                transfer[k] = 0;
            }
        }
    }

    /** Goes to a time in the step, back from its end, where it has come to nothing again (s). */
    void goTo(double timeS) {
        FlashPattern pattern = step.pattern();
        double atS = step.startS() + step.lengthS();
        rippleV = 0;
        pattern.seek(atS - Envelope.BEFORE_EDGE_S);
        while (atS - timeS > 1e-6) {
            double fromS = Math.max(pattern.startS(), timeS);
            advance(pattern.combination(), fromS - atS);
            atS = fromS;
            pattern.previous();
        }
    }

    /** Goes through so much time in a combination. */
    void advance(int combination, double durationS) {
        rippleV += slopeVPerS[combination] * durationS;
    }

    /** What to add to the node's voltage in a combination now (V). */
    double atV(int combination) {
        return inV(combination, 0);
    }

    /** What to add to it in so much time, all of it in that combination (V). */
    double inV(int combination, double durationS) {
        return (rippleV + slopeVPerS[combination] * durationS) * transfer[combination];
    }
}
