package curbwatt.engine.control;

import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.quantity.Require;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * Settings and rule of a device that starts a stopped engine to save the battery, and stops it again.
 *
 * <p>It acts only where the phase has the engine off with the equipment in use, never while the vehicle is parked. It
 * asks for a start once the sensed voltage has been below {@code levelV} for {@code delayS} without a break. It stops
 * what it started once {@code minimumRunS} is over and either the battery has been charged with less than
 * {@code taperedA} for {@code taperDelayS} without a break (a battery that still gives current is not charged), or
 * {@code longestRunS} is over. Whether the engine does start is for the caller to find out: a start that failed is told
 * by {@link #failed}, and it is not tried again before the next phase.
 *
 * @param name unique within the vehicle
 * @param sense where the voltage is taken
 * @param levelV starts below (V), 8 … 13.5
 * @param delayS unbroken time below it before the start (s), 0 … 3600
 * @param minimumRunS least running time (s), 30 … 86400
 * @param taperedA charging current below which the battery counts as charged (A), 0.1 … 200, if it looks at that
 * @param taperDelayS unbroken time below it before the stop (s), 0 … 3600
 * @param longestRunS running time after which it stops in any case (s), not below the minimum, if it has one
 * @param idleRpm engine speed while it runs (1/min), 500 … 3000
 */
public record AutomaticStart(
        String name,
        SensePoint sense,
        double levelV,
        double delayS,
        double minimumRunS,
        OptionalDouble taperedA,
        double taperDelayS,
        OptionalDouble longestRunS,
        double idleRpm) {

    /** Refuses figures out of range, and a start without any end. */
    public AutomaticStart {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(sense, "sense");
        Require.inside("startV", levelV, 8, 13.5, "V");
        Require.inside("startDelayS", delayS, 0, 3600, "s");
        Require.inside("minimumRunS", minimumRunS, 30, 86400, "s");
        taperedA.ifPresent(limitA -> Require.inside("taperedA", limitA, 0.1, 200, "A"));
        Require.inside("taperDelayS", taperDelayS, 0, 3600, "s");
        if (longestRunS.isPresent()) {
            Require.inside("longestRunS", longestRunS.getAsDouble(), minimumRunS, 86400, "s");
        }
        if (taperedA.isEmpty() && longestRunS.isEmpty()) {
            throw new IllegalArgumentException(
                    "neither taperedA nor longestRunS is given; the engine would never stop");
        }
        Require.inside("idleRpm", idleRpm, 500, 3000, "/min");
    }

    /**
     * The device between two instants.
     *
     * @param running whether it has the engine running
     * @param changedS when it last started or stopped the engine (s)
     * @param wish since when the figures have asked for a change
     * @param locked whether a start has failed in this phase
     * @param starts how often it started the engine
     * @param earlierRunS running time before the present run (s)
     */
    public record State(
            boolean running, double changedS, HeldCondition wish, boolean locked, int starts, double earlierRunS) {

        /** Running time up to a time (s). */
        public double runS(double timeS) {
            return earlierRunS + (running ? timeS - changedS : 0);
        }

        /** The same, but asked for nothing. */
        public State forgetting() {
            return wishing(HeldCondition.not());
        }

        private State flipped(double timeS) {
            return new State(!running, timeS, HeldCondition.not(), locked, running ? starts : starts + 1, runS(timeS));
        }

        private State wishing(HeldCondition since) {
            return new State(running, changedS, since, locked, starts, earlierRunS);
        }
    }

    /** The state before anything happened. */
    public State start() {
        return new State(false, Double.NEGATIVE_INFINITY, HeldCondition.not(), false, 0, 0);
    }

    /**
     * Whether figures ask for a change. Between two instants the caller looks for the moment at which this answer
     * changes.
     */
    public boolean wishes(State state, double sensedV, double batteryA) {
        if (state.running()) {
            boolean charging = batteryA <= 0;
            return charging && taperedA.isPresent() && -batteryA < taperedA.getAsDouble();
        }
        return !state.locked() && sensedV < levelV;
    }

    /**
     * The state after a time's figures; acts at most once.
     *
     * @param state the state before
     * @param timeS time (s), not before any time shown earlier
     * @param mode what the phase has the engine do
     * @param sensedV voltage at the sense point (V)
     * @param batteryA battery current, discharging counts positive (A)
     */
    public State next(State state, double timeS, EngineMode mode, double sensedV, double batteryA) {
        if (mode != EngineMode.OFF) {
            return (state.running() ? state.flipped(timeS) : state).wishing(HeldCondition.not());
        }
        State waiting = state.wishing(state.wish().next(timeS, wishes(state, sensedV, batteryA)));
        return actsAtS(waiting) <= timeS + HeldCondition.INSTANT_S ? waiting.flipped(timeS) : waiting;
    }

    /** When it acts if the figures stay on their side; positive infinity: it waits for nothing (s). */
    public double actsAtS(State state) {
        if (!state.running()) {
            return state.wish().overS(delayS);
        }
        double taperedS = Math.max(state.wish().overS(taperDelayS), state.changedS() + minimumRunS);
        return Math.min(taperedS, state.changedS() + longestRunS.orElse(Double.POSITIVE_INFINITY));
    }

    /** The start asked for at a time did not succeed: it does not count, and is not tried again in this phase. */
    public State failed(State state, double timeS) {
        return new State(false, timeS, HeldCondition.not(), true, state.starts() - 1, state.earlierRunS());
    }

    /** A new phase began: a start that failed before may be tried again. */
    public State phaseBegan(State state) {
        return new State(state.running(), state.changedS(), state.wish(), false, state.starts(), state.earlierRunS());
    }
}
