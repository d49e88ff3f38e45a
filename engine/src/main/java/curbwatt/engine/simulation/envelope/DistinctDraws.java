package curbwatt.engine.simulation.envelope;

import curbwatt.engine.simulation.part.CircuitDraw;
import java.util.ArrayList;
import java.util.List;

/**
 * What the circuits draw in the states that flashers come to, each draw once.
 *
 * <p>Of alike lamps on one circuit it does not matter which are lit, but how many: left and right in turn are one combination.
 */
final class DistinctDraws {

    private final List<CircuitDraw[]> distinct = new ArrayList<>();
    private final List<Integer> places = new ArrayList<>();

    /** Adds what the circuits draw in the next state. */
    void add(CircuitDraw[] draws) {
        int place = 0;
        while (place < distinct.size() && !areAlike(distinct.get(place), draws)) {
            place++;
        }
        if (place == distinct.size()) {
            distinct.add(draws);
        }
        places.add(place);
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

    /** Places of the draws of states, by their numbers in the order in which they were added. */
    int[] places(int[] states) {
        int[] byState = places.stream().mapToInt(Integer::intValue).toArray();
        int[] byNumber = new int[states.length];
        for (int i = 0; i < states.length; i++) {
            byNumber[i] = byState[states[i]];
        }
        return byNumber;
    }
}
