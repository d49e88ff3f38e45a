package curbwatt.engine.simulation.part;

import curbwatt.engine.link.BatteryLink;
import curbwatt.engine.simulation.clock.LevelTimer;
import curbwatt.engine.simulation.clock.Reading;

/**
 * A link between steps: whether it is closed, and the timers that open and close it.
 *
 * <p>To the network a link is a path, a charger, or nothing for now; this class says which, so that the network does
 * not ask
 * what kind it is.
 */
public final class LinkState {

    private final BatteryLink link;
    private final LevelTimer closeTimer;
    private final LevelTimer openTimer;
    private final boolean switches;
    private boolean closed;
    private final Reading reading = new Reading(0);

    public LinkState(BatteryLink link) {
        this.link = link;
        switches = link instanceof BatteryLink.ChargeRelay || link instanceof BatteryLink.DcDcCharger;
        closed = !switches;
        if (link instanceof BatteryLink.ChargeRelay relay) {
            closeTimer = LevelTimer.above(relay.closeV(), relay.closeDelayS());
            openTimer = LevelTimer.below(relay.openV(), relay.openDelayS());
        } else if (link instanceof BatteryLink.DcDcCharger charger) {
            closeTimer = LevelTimer.above(charger.startV(), charger.startDelayS());
            openTimer = LevelTimer.below(charger.stopV(), charger.stopDelayS());
        } else {
            closeTimer = LevelTimer.above(Double.POSITIVE_INFINITY, 0);
            openTimer = LevelTimer.below(Double.NEGATIVE_INFINITY, 0);
        }
    }

    public boolean isClosed() {
        return closed;
    }

    /** Whether its current follows from the voltages at its ends at present. */
    public boolean isPath() {
        return closed && !(link instanceof BatteryLink.DcDcCharger);
    }

    /** Whether it gives a regulated current at present. */
    public boolean isCharger() {
        return closed && link instanceof BatteryLink.DcDcCharger;
    }

    public BatteryLink.DcDcCharger charger() {
        return (BatteryLink.DcDcCharger) link;
    }

    /** Whether a path lets current through from X to S too. */
    public boolean isTwoWay() {
        return !(link instanceof BatteryLink.Diode);
    }

    /** Voltage that a path takes off before any current flows (V). */
    public double forwardV() {
        return link instanceof BatteryLink.Diode diode ? diode.forwardV() : 0;
    }

    /** Resistance of a path (Ω). */
    public double resistanceOhm() {
        if (link instanceof BatteryLink.Solid solid) {
            return solid.resistanceOhm();
        }
        return link instanceof BatteryLink.ChargeRelay relay
                ? relay.resistanceOhm()
                : ((BatteryLink.Diode) link).resistanceOhm();
    }

    /** Shows it the starter node's voltage through a step, and says when in it the link acts (s); infinity: not. */
    public double actsS(double lengthS, double startV, double endV) {
        if (!switches) {
            return Double.POSITIVE_INFINITY;
        }
        reading.set(lengthS, startV, endV, startV);
        return (closed ? openTimer : closeTimer).expiryS(reading);
    }

    /** Takes note of a step. */
    public void advance(double lengthS, double startV, double endV) {
        if (switches) {
            reading.set(lengthS, startV, endV, startV);
            (closed ? openTimer : closeTimer).advance(reading);
        }
    }

    /** Opens or closes. */
    public void act() {
        closed = !closed;
        closeTimer.reset();
        openTimer.reset();
    }

    /** Whether it opens and closes at all. */
    public boolean switches() {
        return switches;
    }

    /** The timer that would switch it at present. */
    private LevelTimer pending() {
        return closed ? openTimer : closeTimer;
    }

    /** Time for which voltages between two bounds make it do nothing (s); 0: it might act, or start or stop counting. */
    public double calmForS(double lowestV, double highestV) {
        return switches ? pending().calmForS(lowestV, highestV) : Double.POSITIVE_INFINITY;
    }

    /** Takes note of a time through which {@link #calmForS} held, with one of the voltages. */
    public void advanceCalm(double nodeV, double durationS) {
        if (switches) {
            pending().advanceCalm(nodeV, durationS);
        }
    }

    /** Time for which the cycle just passed may be repeated without an act (s). */
    public double repeatsForS(double cycleS) {
        return switches ? pending().repeatsForS(cycleS) : Double.POSITIVE_INFINITY;
    }

    /** Takes note of whole cycles like the one just passed. */
    public void repeat(double cycleS, double durationS) {
        if (switches) {
            pending().repeat(cycleS, durationS);
        }
    }

    /** Level at which it would switch at present (V). */
    public double levelV() {
        return pending().levelV();
    }
}
