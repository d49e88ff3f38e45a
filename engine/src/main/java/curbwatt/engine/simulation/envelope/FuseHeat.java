package curbwatt.engine.simulation.envelope;

import curbwatt.engine.simulation.device.CalmWatch;
import curbwatt.engine.simulation.part.CircuitState;
import curbwatt.engine.simulation.part.OperatingPoint;
import java.util.List;

/**
 * Warms fuses through a part of a long step in which none of them opens, segment by segment: heat that comes before a pause dies away
 * more than heat that comes after it. How fast a combination warms a fuse runs on a parabola.
 */
final class FuseHeat {

    private final CalmWatch calm;
    private final List<CircuitState> circuits;
    private final OperatingPoint point;
    private double[] warmsPerS = new double[0];
    private double[] slopePerS = new double[0];
    private double[] bendPerS = new double[0];

    FuseHeat(CalmWatch calm, List<CircuitState> circuits) {
        this.calm = calm;
        this.circuits = circuits;
        point = new OperatingPoint(circuits.size());
    }

    /** Warms all that may warm, from a step's start up to a share of it. */
    void follow(LongStep step, double share) {
        for (int c = 0; c < circuits.size(); c++) {
            if (calm.fuses.mayWarm(c, calm.highest)) {
                layParabolas(step, c, share);
                follow(step, circuits.get(c), share);
            }
        }
    }

    private void layParabolas(LongStep step, int circuit, double share) {
        int size = step.pattern().size();
        if (warmsPerS.length != size) {
            warmsPerS = new double[size];
            slopePerS = new double[size];
            bendPerS = new double[size];
        }
        for (int k = 0; k < size; k++) {
            double startPerS = warmsPerS(step, circuit, k, 0);
            double middlePerS = warmsPerS(step, circuit, k, 0.5 * share);
            double endPerS = warmsPerS(step, circuit, k, share);
            warmsPerS[k] = startPerS;
            slopePerS[k] = -3 * startPerS + 4 * middlePerS - endPerS;
            bendPerS[k] = 2 * startPerS - 4 * middlePerS + 2 * endPerS;
        }
    }

    private double warmsPerS(LongStep step, int circuit, int combination, double share) {
        step.sensedAt(combination, share, point);
        return circuits.get(circuit).fuseWarmsPerS(point.circuitA[circuit]);
    }

    private void follow(LongStep step, CircuitState circuit, double share) {
        FlashPattern pattern = step.pattern();
        double wholeS = share * step.lengthS();
        double endS = step.startS() + wholeS;
        double atS = step.startS();
        pattern.seek(atS);
        while (endS - atS > 1e-6) {
            double toS = Math.min(pattern.endS(), endS);
            double width = (toS - atS) / wholeS;
            double half = (atS - step.startS()) / wholeS + 0.5 * width;
            int k = pattern.combination();
            // the mean over the segment
            double meanPerS =
                    warmsPerS[k] + half * (slopePerS[k] + half * bendPerS[k]) + bendPerS[k] * width * width / 12;
            circuit.warmFuseSoFast(meanPerS, toS - atS);
            atS = toS;
            if (!pattern.isSteady()) {
                pattern.next();
            }
        }
    }
}
