package curbwatt.engine.study.recharge;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.DoublePredicate;
import java.util.function.IntPredicate;

/** The least of rising whole steps that does, by halving: it is taken for granted that more helps more. */
final class LeastStep {

    /** Slowest idle that is tried (1/min). */
    static final double LEAST_RPM = 500;

    /** Fastest idle that is tried (1/min). */
    static final double MOST_RPM = 2000;

    /** How finely idle speeds are searched (1/min). */
    static final double STEP_RPM = 10;

    private LeastStep() {}

    /** Lowest idle speed that does (1/min); empty: none up to {@link #MOST_RPM} does. */
    static OptionalDouble lowestRpm(DoublePredicate does) {
        int first = (int) (LEAST_RPM / STEP_RPM);
        int last = (int) (MOST_RPM / STEP_RPM);
        OptionalInt found = least(first, last, step -> does.test(step * STEP_RPM));
        return found.isPresent() ? OptionalDouble.of(found.getAsInt() * STEP_RPM) : OptionalDouble.empty();
    }

    /** Least whole number that does; empty: not even the last one does. */
    static OptionalInt least(int first, int last, IntPredicate does) {
        if (last < first || !does.test(last)) {
            return OptionalInt.empty();
        }
        if (does.test(first)) {
            return OptionalInt.of(first);
        }
        int most = last;
        int below = first;
        while (most - below > 1) {
            int middle = below + (most - below) / 2;
            if (does.test(middle)) {
                most = middle;
            } else {
                below = middle;
            }
        }
        return OptionalInt.of(most);
    }
}
