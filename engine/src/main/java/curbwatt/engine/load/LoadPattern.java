package curbwatt.engine.load;

import curbwatt.engine.quantity.Require;
import java.util.List;
import java.util.Objects;

/** When a load draws its rated current while its stage is on. */
public sealed interface LoadPattern {

    /** Share of the time in which the load draws its rated current, 0 … 1. */
    double onFraction();

    /** How often in a second it is switched on; 0 if never again. */
    double onsetsPerS();

    /** The same instants, drawing so many times as much between the on-times. */
    LoadPattern drawing(double factor);

    /** On without a break. */
    record Continuous() implements LoadPattern {
        @Override
        public double onFraction() {
            return 1;
        }

        @Override
        public double onsetsPerS() {
            return 0;
        }

        @Override
        public LoadPattern drawing(double factor) {
            return this;
        }
    }

    /**
     * A cycle of on-intervals.
     *
     * <p>The load is on at time t when {@code (t − phase) mod period} lies in one of the intervals; t counts from the
     * start of the scene. Loads on one clock are synchronised: with equal phases their peaks add, with phases half a
     * period apart they interleave.
     *
     * @param clock period shared by the loads on it
     * @param onIntervals lit parts of the cycle, in order, not overlapping, within the period
     * @param phaseMs delay of the cycle against its clock (ms), 0 … period
     */
    record Flashing(FlashClock clock, List<OnInterval> onIntervals, double phaseMs) implements LoadPattern {
        /** Refuses an empty cycle, intervals out of order or past the period, and a phase outside it. */
        public Flashing {
            Objects.requireNonNull(clock, "clock");
            onIntervals = List.copyOf(onIntervals);
            if (onIntervals.isEmpty()) {
                throw new IllegalArgumentException("onIntervals is empty; a flashing load needs at least one");
            }
            Require.inside("phaseMs", phaseMs, 0, clock.periodMs(), "ms");
            double earliestMs = 0;
            for (OnInterval interval : onIntervals) {
                Require.inside("onIntervals start", interval.fromMs(), earliestMs, clock.periodMs(), "ms");
                Require.inside("onIntervals end", interval.toMs(), interval.fromMs(), clock.periodMs(), "ms");
                earliestMs = interval.toMs();
            }
        }

        @Override
        public double onFraction() {
            return onIntervals.stream().mapToDouble(OnInterval::lengthMs).sum() / clock.periodMs();
        }

        @Override
        public double onsetsPerS() {
            return 1000 * onIntervals.size() / clock.periodMs();
        }

        @Override
        public LoadPattern drawing(double factor) {
            return this;
        }
    }

    /**
     * On for some seconds in every so many: a siren, a pump, a radio that transmits.
     *
     * @param onS length of the on-time (s), above 0, not above {@code everyS}
     * @param everyS length of the cycle (s), up to one day
     * @param offsetS start of the first on-time after the scene's start (s), 0 … everyS
     * @param betweenCurrentA current between the on-times (A), whatever the voltage, 0 … 100: a radio listening
     */
    record Duty(double onS, double everyS, double offsetS, double betweenCurrentA) implements LoadPattern {

        /** Refuses an on-time longer than the cycle and figures out of range. */
        public Duty {
            Require.inside("everyS", everyS, 1e-3, 86400, "s");
            Require.inside("onS", onS, 1e-3, everyS, "s");
            Require.inside("offsetS", offsetS, 0, everyS, "s");
            Require.inside("betweenCurrentA", betweenCurrentA, 0, 100, "A");
        }

        @Override
        public double onFraction() {
            return onS / everyS;
        }

        @Override
        public double onsetsPerS() {
            return 1 / everyS;
        }

        @Override
        public LoadPattern drawing(double factor) {
            return new Duty(onS, everyS, offsetS, factor * betweenCurrentA);
        }
    }

    /**
     * On for some seconds at random instants: speech on a radio, a siren sounded when it is needed.
     *
     * <p>Sixteen times {@code everyS} is a block, and every block has exactly sixteen on-times of {@code onS}; where
     * in the block they fall is drawn from the seed, with gaps close to exponential. The same seed gives the same
     * edges, each computed from its index alone, so nothing needs to be remembered but the index.
     *
     * @param onS length of each on-time (s), 1 ms … 0.9 of {@code everyS}
     * @param everyS mean time from one on-time to the next (s), up to one day
     * @param betweenCurrentA current between the on-times (A), whatever the voltage, 0 … 100: a radio listening
     * @param seed which of all such sequences; loads with one seed and the same times switch together
     */
    record RandomDuty(double onS, double everyS, double betweenCurrentA, long seed) implements LoadPattern {

        private static final double LARGEST_ON_FRACTION = 0.9;
        private static final double NS_PER_S = 1e9;

        /** Refuses an on-time longer than nine tenths of the mean interval and figures out of range. */
        public RandomDuty {
            Require.inside("everyS", everyS, 1e-2, 86400, "s");
            Require.inside("onS", onS, 1e-3, LARGEST_ON_FRACTION * everyS, "s");
            Require.inside("betweenCurrentA", betweenCurrentA, 0, 100, "A");
        }

        @Override
        public double onFraction() {
            return onS / everyS;
        }

        @Override
        public double onsetsPerS() {
            return 1 / everyS;
        }

        @Override
        public LoadPattern drawing(double factor) {
            return new RandomDuty(onS, everyS, factor * betweenCurrentA, seed);
        }

        /**
         * Time of an edge since the scene's start (ns), rising with the index. Off before edge 0; on after an even
         * index, off after an odd one.
         *
         * @param index which edge, from 0
         */
        public long edgeNs(long index) {
            return RandomEdges.atNs(seed, Math.round(onS * NS_PER_S), Math.round(everyS * NS_PER_S), index);
        }
    }
}
