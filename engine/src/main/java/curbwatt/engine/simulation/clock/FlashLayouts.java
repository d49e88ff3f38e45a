package curbwatt.engine.simulation.clock;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/**
 * Layouts that runs of one scene share. How lamps flash depends on their clocks alone, not on what a study or a hand on a knob
 * changes besides. It remembers, and never bears on a result.
 */
public final class FlashLayouts {

    /** Beyond so many it begins anew: a window takes some hundred thousand bytes. */
    private static final int MOST = 256;

    private final Map<Key, FlashLayout> known = new ConcurrentHashMap<>();

    private record Key(List<List<Long>> patterns, long fromNs, long lengthNs) {}

    /**
     * The layout of a stretch of time, made if it is not known yet.
     *
     * @param patterns the patterns that flash in it: all that the layout depends on
     * @param fromNs its start (ns)
     * @param lengthNs its length (ns)
     * @param maker makes it
     */
    public FlashLayout of(List<List<Long>> patterns, long fromNs, long lengthNs, Supplier<FlashLayout> maker) {
        if (known.size() >= MOST) {
            known.clear();
        }
        return known.computeIfAbsent(new Key(patterns, fromNs, lengthNs), key -> maker.get());
    }
}
