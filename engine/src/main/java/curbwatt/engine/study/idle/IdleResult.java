package curbwatt.engine.study.idle;

import java.util.List;
import java.util.Objects;

/**
 * What the study found.
 *
 * @param devices the devices that were compared
 * @param base the ways as things are
 * @param tried the ways with one lever moved, lever by lever, factors rising, the present value among them
 * @param flips where the answer changes; of levers moved by runs, nearest to the present value on either side
 */
public record IdleResult(IdleDevices devices, IdleCase base, List<Tried> tried, List<Flip> flips) {

    /** Copies the lists. */
    public IdleResult {
        Objects.requireNonNull(devices, "devices");
        Objects.requireNonNull(base, "base");
        tried = List.copyOf(tried);
        flips = List.copyOf(flips);
    }

    /** What was tried with one lever. */
    public List<Tried> tried(Lever lever) {
        return tried.stream().filter(one -> one.lever() == lever).toList();
    }
}
