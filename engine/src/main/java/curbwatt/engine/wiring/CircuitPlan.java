package curbwatt.engine.wiring;

import curbwatt.engine.quantity.Require;
import java.util.Objects;
import java.util.Optional;

/**
 * A circuit as it is to be wired.
 *
 * @param name as the user calls it
 * @param current what it draws
 * @param run its wire
 * @param place where the wire lies
 * @param fuse the fuse at its source, if there is one
 * @param dropLimit how much voltage it may lose
 * @param systemV voltage that the limit is a share of, V, 6 to 60
 */
public record CircuitPlan(
        String name,
        CircuitCurrent current,
        WireRun run,
        Place place,
        Optional<InstalledFuse> fuse,
        DropLimit dropLimit,
        double systemV) {
    /** Refuses missing parts. */
    public CircuitPlan {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(current, "current");
        Objects.requireNonNull(run, "run");
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(fuse, "fuse");
        Objects.requireNonNull(dropLimit, "dropLimit");
        Require.inside("systemV", systemV, 6, 60, "V");
    }

    /**
     * Where a wire lies.
     *
     * @param space engine space or not
     * @param bundled conductors in its bundle that carry current, itself included, 1 to 24
     * @param conductorC temperature of the conductor at which its drop is taken, °C
     * @param ambientC air round the fuse, °C
     */
    public record Place(WireSpace space, int bundled, double conductorC, double ambientC) {
        /** Refuses impossible values. */
        public Place {
            Objects.requireNonNull(space, "space");
            Ampacity.bundleFactor(bundled);
            Require.inside("conductorC", conductorC, -60, 200, "°C");
            InstalledFuse.ambientShare(ambientC);
        }
    }

    /** Returns the drop out and back at a current, V; with the fuse's own. */
    public double dropV(double currentA) {
        return currentA * (run.loopOhm(place.conductorC()) + fuseOhm());
    }

    /** Returns the same plan in copper of another size. */
    CircuitPlan inCopper(WireSize size) {
        return new CircuitPlan(name, current, run.inCopper(size), place, fuse, dropLimit, systemV);
    }

    private double fuseOhm() {
        return fuse.map(installed -> installed.rating().resistanceOhm()).orElse(0.0);
    }
}
