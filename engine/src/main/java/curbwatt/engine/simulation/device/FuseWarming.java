package curbwatt.engine.simulation.device;

import curbwatt.engine.simulation.part.CircuitState;
import curbwatt.engine.simulation.part.OperatingPoint;
import java.util.Arrays;
import java.util.List;

/**
 * Which fuses may warm in a part of a long step, and for how long they surely hold.
 *
 * <p>As long as each combination of lit loads plainly warms a fuse or plainly lets it cool, what it has come to after the part can
 * be added up, and need not be shown step by step.
 */
public final class FuseWarming {

    private final List<CircuitState> circuits;
    private final boolean[] plain;

    FuseWarming(List<CircuitState> circuits) {
        this.circuits = circuits;
        plain = new boolean[circuits.size()];
    }

    /** Whether any fuse might warm at currents up to some. */
    public boolean isPossible(OperatingPoint highest) {
        for (int c = 0; c < plain.length; c++) {
            if (mayWarm(c, highest)) {
                return true;
            }
        }
        return false;
    }

    /** Whether a circuit's fuse might warm at currents up to some. */
    public boolean mayWarm(int circuit, OperatingPoint highest) {
        return !circuits.get(circuit).isFuseCalm(highest.circuitA[circuit]);
    }

    /** Begins to look at another part. */
    public void clear() {
        Arrays.fill(plain, true);
    }

    /** Takes in a combination, by what holds at the part's start, middle and end. */
    public void include(OperatingPoint start, OperatingPoint middle, OperatingPoint end) {
        for (int c = 0; c < plain.length; c++) {
            boolean warms = warms(c, start);
            plain[c] &= warms == warms(c, middle) && warms == warms(c, end);
        }
    }

    private boolean warms(int circuit, OperatingPoint point) {
        return circuits.get(circuit).fuseWarmsPerS(point.circuitA[circuit]) > 0;
    }

    /** Time for which a circuit's fuse surely holds (s); 0: that is not known. */
    double calmForS(int circuit, OperatingPoint highest) {
        if (!mayWarm(circuit, highest)) {
            return Double.POSITIVE_INFINITY;
        }
        return plain[circuit] ? circuits.get(circuit).fuseOpensInS(highest.circuitA[circuit]) : 0;
    }
}
