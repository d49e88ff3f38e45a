package curbwatt.engine.simulation.device;

import curbwatt.engine.event.EventKind;
import curbwatt.engine.protection.PackProtection;
import curbwatt.engine.protection.PackReading;
import curbwatt.engine.protection.ProtectionState;
import curbwatt.engine.protection.Reason;
import curbwatt.engine.simulation.book.RunBook;
import curbwatt.engine.simulation.part.BatteryWork;
import curbwatt.engine.simulation.part.NodePoint;
import java.util.Locale;

/** The protection inside a pack, between steps: its settings decide, this class remembers and tells. */
public final class PackState {

    private final PackProtection protection;
    private final String name;
    private final BatteryWork battery;
    private final RunBook book;
    private ProtectionState state = ProtectionState.closed();

    public PackState(PackProtection protection, String name, BatteryWork battery, RunBook book) {
        this.protection = protection;
        this.name = name;
        this.battery = battery;
        this.book = book;
    }

    /** Time with the readings of a point until it stops or releases something; infinity: nothing to come (s). */
    public double changesInS(NodePoint point) {
        return protection.changesInS(state, reading(point));
    }

    /** Takes note of a step whose readings were those of a point, and acts. */
    public void advance(double endS, double lengthS, NodePoint point) {
        ProtectionState next = protection.next(state, reading(point), lengthS);
        for (Reason reason : Reason.values()) {
            boolean was = state.reasons().contains(reason);
            if (was != next.reasons().contains(reason)) {
                EventKind did = was ? EventKind.PACK_RELEASED : EventKind.PACK_STOPPED;
                String why = reason.name().toLowerCase(Locale.ROOT).replace('_', ' ');
                book.event(endS, did, name + ": " + why, point.nodeV, battery.stateOfChargeFraction());
            }
        }
        state = next;
        battery.allow(state.allowsCharge(), state.allowsDischarge());
    }

    /** Whether readings between two bounds let it do nothing, and wait for nothing. */
    boolean isCalm(NodePoint lowest, NodePoint highest) {
        return changesInS(lowest) == Double.POSITIVE_INFINITY && changesInS(highest) == Double.POSITIVE_INFINITY;
    }

    private PackReading reading(NodePoint point) {
        return new PackReading(point.nodeV, point.batteryA(), battery.temperatureC());
    }
}
