package curbwatt.engine.load;

import curbwatt.engine.quantity.Require;
import java.util.List;
import java.util.Objects;

/** When a load draws its rated current while its stage is on. */
public sealed interface LoadPattern {

    /** Share of the time in which the load draws its rated current, 0 … 1. */
    double onFraction();

    /** On without a break. */
    record Continuous() implements LoadPattern {
        @Override
        public double onFraction() {
            return 1;
        }
    }

    /**
     * A cycle of on-intervals.
     *
     * <p>The load is on at time t when {@code (t − phase) mod period} lies in one of the intervals; t counts from the
     * start
     * of the scene. Loads on one clock are synchronised: with equal phases their peaks add, with phases half a period
     * apart
     * they interleave.
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
    }
}
