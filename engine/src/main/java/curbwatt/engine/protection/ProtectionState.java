package curbwatt.engine.protection;

import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;

/**
 * What a pack's protection remembers. Immutable.
 *
 * @param reasons limits that are passed, each of which stops one direction
 * @param heldS for each limit that is on its way to change, the unbroken time that it has been, s
 */
public record ProtectionState(Set<Reason> reasons, Map<Reason, Double> heldS) {
    /** Copies both. */
    public ProtectionState {
        reasons =
                Collections.unmodifiableSet(reasons.isEmpty() ? EnumSet.noneOf(Reason.class) : EnumSet.copyOf(reasons));
        Map<Reason, Double> copy = new EnumMap<>(Reason.class);
        copy.putAll(heldS);
        heldS = Collections.unmodifiableMap(copy);
    }

    /** Returns a protection that lets everything through. */
    public static ProtectionState closed() {
        return new ProtectionState(Set.of(), Map.of());
    }

    /** Whether current may flow into the pack. */
    public boolean allowsCharge() {
        return reasons.stream().noneMatch(Reason::stopsCharging);
    }

    /** Whether current may flow out of the pack. */
    public boolean allowsDischarge() {
        return reasons.stream().allMatch(Reason::stopsCharging);
    }
}
