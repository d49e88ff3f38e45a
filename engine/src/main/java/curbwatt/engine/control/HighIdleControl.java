package curbwatt.engine.control;

import curbwatt.engine.quantity.Require;
import java.util.Objects;

/**
 * Settings and rule of a device that makes a standing engine idle faster while the electrical system asks for it.
 *
 * <p>It acts only while the engine idles. Raised once its trigger has called for {@code delayS} without a break; back
 * once the trigger has released for {@code releaseDelayS} without a break, but not before {@code dwellS} at high
 * idle. Where the release condition is met at high idle alone, it goes up and down for ever; the dwell bounds how
 * often, and the count of raises tells.
 *
 * @param name unique within the vehicle
 * @param trigger what asks and what lets go
 * @param delayS unbroken call before the speed goes up (s), 0 … 3600
 * @param releaseDelayS unbroken release before it goes back (s), 0 … 3600
 * @param dwellS least time at high idle (s), 1 … 86400
 * @param highIdleRpm engine speed while raised (1/min), 500 … 3000; a phase that idles faster is not slowed down
 */
public record HighIdleControl(
        String name, IdleTrigger trigger, double delayS, double releaseDelayS, double dwellS, double highIdleRpm) {

    /** Refuses figures out of range. */
    public HighIdleControl {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(trigger, "trigger");
        Require.inside("raiseDelayS", delayS, 0, 3600, "s");
        Require.inside("releaseDelayS", releaseDelayS, 0, 3600, "s");
        Require.inside("dwellS", dwellS, 1, 86400, "s");
        Require.inside("highIdleRpm", highIdleRpm, 500, 3000, "/min");
    }

    /**
     * The control between two instants.
     *
     * @param raised whether it holds the engine at high idle
     * @param changedS when it last went up or down (s)
     * @param wish since when the figures have asked for a change
     * @param raises how often it went up
     * @param earlierRaisedS time at high idle before the present one (s)
     */
    public record State(boolean raised, double changedS, HeldCondition wish, int raises, double earlierRaisedS) {

        /** Time at high idle up to a time (s). */
        public double raisedS(double timeS) {
            return earlierRaisedS + (raised ? timeS - changedS : 0);
        }

        /** The same, but asked for nothing. */
        public State forgetting() {
            return new State(raised, changedS, HeldCondition.not(), raises, earlierRaisedS);
        }

        private State flipped(double timeS) {
            return new State(!raised, timeS, HeldCondition.not(), raised ? raises : raises + 1, raisedS(timeS));
        }
    }

    /** The state before anything happened. */
    public State start() {
        return new State(false, Double.NEGATIVE_INFINITY, HeldCondition.not(), 0, 0);
    }

    /**
     * Whether figures ask for a change. Between two instants the caller looks for the moment at which this answer
     * changes.
     */
    public boolean wishes(State state, double sensedV, double batteryA) {
        return state.raised() ? trigger.releases(sensedV, batteryA) : trigger.calls(sensedV, batteryA);
    }

    /**
     * The state after a time's figures; acts at most once.
     *
     * @param state the state before
     * @param timeS time (s), not before any time shown earlier
     * @param idling whether the engine runs and stands
     * @param sensedV voltage at the trigger's sense point (V)
     * @param batteryA battery current, discharging counts positive (A)
     */
    public State next(State state, double timeS, boolean idling, double sensedV, double batteryA) {
        if (!idling) {
            State low = state.raised() ? state.flipped(timeS) : state;
            return new State(false, low.changedS(), HeldCondition.not(), low.raises(), low.earlierRaisedS());
        }
        HeldCondition wish = state.wish().next(timeS, wishes(state, sensedV, batteryA));
        State waiting = new State(state.raised(), state.changedS(), wish, state.raises(), state.earlierRaisedS());
        return actsAtS(waiting) <= timeS + HeldCondition.INSTANT_S ? waiting.flipped(timeS) : waiting;
    }

    /** When it acts if the figures stay on their side; positive infinity: they ask for nothing (s). */
    public double actsAtS(State state) {
        return state.raised()
                ? Math.max(state.wish().overS(releaseDelayS), state.changedS() + dwellS)
                : state.wish().overS(delayS);
    }

    /** Speed of an idling engine (1/min), where the phase asks for {@code phaseRpm}. */
    public double engineRpm(State state, double phaseRpm) {
        return state.raised() ? Math.max(highIdleRpm, phaseRpm) : phaseRpm;
    }
}
