package curbwatt.engine.simulation.envelope;

import curbwatt.engine.simulation.part.CircuitDraw;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.LongFunction;

/**
 * What the circuits draw in the states that flashers come to, each draw once.
 *
 * <p>Of alike lamps on one circuit it does not matter which are lit, but how many: left and right in turn are one combination.
 */
final class DistinctDraws {

    private final List<CircuitDraw[]> distinct = new ArrayList<>();
    private final Map<Long, Integer> places = new HashMap<>();

    /**
     * Finds the place of what is drawn in each of some states.
     *
     * @param drawing says what the circuits draw in a state; not asked for one that is known
     */
    int[] places(long[] states, LongFunction<CircuitDraw[]> drawing) {
        int[] found = new int[states.length];
        for (int i = 0; i < states.length; i++) {
            found[i] = places.computeIfAbsent(states[i], state -> place(drawing.apply(state)));
        }
        return found;
    }

    private int place(CircuitDraw[] draws) {
        int place = 0;
        while (place < distinct.size() && !areAlike(distinct.get(place), draws)) {
            place++;
        }
        if (place == distinct.size()) {
            distinct.add(draws);
        }
        return place;
    }

    private static boolean areAlike(CircuitDraw[] one, CircuitDraw[] other) {
        boolean alike = true;
        for (int c = 0; c < one.length && alike; c++) {
            alike = one[c].isLike(other[c]);
        }
        return alike;
    }

    /** The draws, by place. */
    List<CircuitDraw[]> distinct() {
        return List.copyOf(distinct);
    }
}
