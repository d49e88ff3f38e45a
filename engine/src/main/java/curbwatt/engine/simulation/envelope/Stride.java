package curbwatt.engine.simulation.envelope;

import curbwatt.engine.simulation.device.CalmWatch;
import curbwatt.engine.simulation.part.EngineState;
import curbwatt.engine.simulation.part.LoadBank;
import curbwatt.engine.simulation.part.LoadState;
import curbwatt.engine.simulation.part.OperatingPoint;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Long steps of one reach: which loads they average over, how long one may be, and when the next is worth a try. */
final class Stride {

    /** Steps under this length are left to the time loop (s). */
    private static final double SHORTEST_S = 0.005;
    /** The same where slow edges alone are waited for: a shorter one costs more than the time loop's own (s). */
    private static final double SHORTEST_BETWEEN_EDGES_S = 10;
    /** Fewest turns of the slowest clock in a long step: what is averaged over is each clock, not their common cycle. */
    private static final double FEWEST_TURNS = 1;
    /** Length tried first after a change (s). */
    private static final double FIRST_S = 30;

    private final Reach reach;
    private final LoadBank bank;
    private final EngineState engine;
    private final CalmWatch calm;
    private final LongStep step;
    private final DevicePass pass;
    private boolean ready;
    private double shortestS;
    private double resumesS;
    private FlashCombinations combinations;
    /** Loads that are not averaged over, and what they drew when the pattern was made. */
    private List<LoadState> edged = List.of();

    private double[] edgedFactors = new double[0];
    private final Map<List<Double>, FlashPattern> patterns = new HashMap<>();

    Stride(Reach reach, LoadBank bank, EngineState engine, CalmWatch calm, LongStep step, DevicePass pass) {
        this.reach = reach;
        this.bank = bank;
        this.engine = engine;
        this.calm = calm;
        this.step = step;
        this.pass = pass;
    }

    /** Something has changed in what is wanted and fed: all is looked at anew. */
    void forget() {
        ready = false;
    }

    /** Something has happened that the loads do not know of: what is being followed begins anew. */
    void interrupt() {
        if (ready) {
            step.interrupt(FIRST_S);
        }
    }

    /** Looks at what is drawn at a time (s). */
    void look(double timeS) {
        boolean anew = !ready;
        if (anew) {
            combinations = new FlashCombinations(bank, timeS, reach.longestPeriodS());
            edged = combinations.others();
            edgedFactors = new double[edged.size()];
            patterns.clear();
            ready = true;
        }
        if (edgesPassed() || anew) {
            begin();
        }
    }

    /** Number of loads whose edges end its steps. */
    int edgedLoads() {
        return edged.size();
    }

    /**
     * Finds a long step and shows it to the devices; its length (s), 0: none.
     *
     * @param endS where it has to end at the latest (s)
     * @param guess a solution near the present one
     */
    double tryFrom(double timeS, double endS, OperatingPoint guess) {
        look(timeS);
        if (timeS > combinations.holdsUntilS() - FEWEST_TURNS * step.pattern().slowestS()) {
            combinations.moveTo(timeS);
            patterns.clear();
            goOn();
        }
        shortestS = step.pattern().isSteady() && !edged.isEmpty()
                ? SHORTEST_BETWEEN_EDGES_S
                : Math.max(SHORTEST_S, FEWEST_TURNS * step.pattern().slowestS());
        double longestS =
                Math.min(reach.longestS(), Math.min(Math.min(endS, combinations.holdsUntilS()), nextEdgeS()) - timeS);
        longestS = Math.min(longestS, engine.bentForS(timeS));
        resumesS = timeS;
        if (longestS < shortestS) {
            resumesS = timeS + longestS;
            return 0;
        }
        double lengthS = step.tryFrom(timeS, longestS, shortestS, guess);
        if (lengthS > 0) {
            lengthS = whileRestartIsPlain(lengthS);
        }
        if (lengthS > 0) {
            lengthS = pass.shown(timeS, lengthS, shortestS);
            resumesS = pass.resumesS();
        }
        return lengthS;
    }

    /** From when on another one may be looked for after the last (s). */
    double resumesS() {
        return resumesS;
    }

    /** Shortest step that the last look was for (s). */
    double shortestS() {
        return shortestS;
    }

    /** Cuts a step before it becomes doubtful whether the engine would start: edge by edge tells the time (s). */
    private double whileRestartIsPlain(double lengthS) {
        boolean endIsPlain = calm.isRestartPlain(step.states().end);
        if (endIsPlain && calm.isRestartPlain(step.states().middle)) {
            return lengthS;
        }
        double plain = 0;
        double doubtful = endIsPlain ? 0.5 : 1;
        while ((doubtful - plain) * lengthS > 0.5 * shortestS) {
            double half = 0.5 * (plain + doubtful);
            if (calm.isRestartPlain(step.states().at(half))) {
                plain = half;
            } else {
                doubtful = half;
            }
        }
        if (plain * lengthS < shortestS) {
            return 0;
        }
        step.shorten(plain * lengthS);
        return plain * lengthS;
    }

    /** Whether a load that is not averaged over draws something else than before; takes note of it. */
    private boolean edgesPassed() {
        boolean passed = false;
        for (int i = 0; i < edgedFactors.length; i++) {
            double factor = edged.get(i).presentFactor();
            passed |= factor != edgedFactors[i];
            edgedFactors[i] = factor;
        }
        return passed;
    }

    private void begin() {
        FlashPattern pattern = pattern();
        step.begin(pattern, FIRST_S);
        pass.begin(pattern);
    }

    /** Goes on in the next window. */
    private void goOn() {
        FlashPattern pattern = pattern();
        if (pattern.size() == step.pattern().size()) {
            step.goOn(pattern);
            pass.begin(pattern);
        } else {
            begin();
        }
    }

    private FlashPattern pattern() {
        List<Double> key = Arrays.stream(edgedFactors).boxed().toList();
        return patterns.computeIfAbsent(key, combinations::pattern);
    }

    private double nextEdgeS() {
        long nextNs = Long.MAX_VALUE;
        for (int i = 0; i < edged.size(); i++) {
            nextNs = Math.min(nextNs, edged.get(i).nextChangeNs());
        }
        return nextNs == Long.MAX_VALUE ? Double.POSITIVE_INFINITY : nextNs / 1e9;
    }

    LongStep step() {
        return step;
    }
}
