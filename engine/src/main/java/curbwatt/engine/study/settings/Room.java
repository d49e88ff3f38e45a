package curbwatt.engine.study.settings;

import java.util.Objects;
import java.util.Optional;

/**
 * How far the vehicle on the road may lie from the scenario before a setting fails.
 *
 * @param roomFactor distance that it stands in every direction, in multiples of the spread; 0: it works as the scenario
 *     stands, or not even that
 * @param end where it fails first beyond that; empty: it was not looked for, or nothing fails within what was tried
 */
public record Room(double roomFactor, Optional<End> end) {

    /**
     * Where a setting fails.
     *
     * @param direction the change under which it fails
     * @param distanceFactor how far, in multiples of the spread
     * @param fate what the run says there; empty: the change is more than the model can take
     */
    public record End(Direction direction, double distanceFactor, Optional<Fate> fate) {

        /** Refuses missing parts. */
        public End {
            Objects.requireNonNull(direction, "direction");
            Objects.requireNonNull(fate, "fate");
        }
    }

    /** Refuses missing parts. */
    public Room {
        Objects.requireNonNull(end, "end");
    }

    /** Whether it stands every single change of the spread's full size, and the joint ones. */
    public boolean standsTheSpread() {
        return roomFactor >= 1;
    }
}
