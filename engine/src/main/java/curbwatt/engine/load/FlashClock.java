package curbwatt.engine.load;

import curbwatt.engine.quantity.Require;
import java.util.Objects;

/**
 * A period that one or several flashing loads keep.
 *
 * @param name unique for each period within a vehicle
 * @param periodMs length of the cycle (ms), 10 … 60000
 */
public record FlashClock(String name, double periodMs) {

    /** Refuses a period out of range. */
    public FlashClock {
        Objects.requireNonNull(name, "name");
        Require.inside("periodMs", periodMs, 10, 60000, "ms");
    }
}
