package curbwatt.engine.study;

import curbwatt.engine.simulation.Simulation;
import java.util.List;

/**
 * Makes another simulation of one: the same vehicle or scene with something changed. A pure function: the one it is
 * given stays as it is.
 *
 * <p>What the changed part refuses comes out as the {@link IllegalArgumentException} of its constructor.
 */
@FunctionalInterface
public interface Variation {

    /** The simulation with the change. */
    Simulation of(Simulation base);

    /** Changes nothing. */
    static Variation none() {
        return base -> base;
    }

    /** All of them, one after the other. */
    static Variation all(List<Variation> variations) {
        return variations.stream().reduce(none(), Variation::then);
    }

    /** This change, and then another. */
    default Variation then(Variation next) {
        return base -> next.of(of(base));
    }
}
