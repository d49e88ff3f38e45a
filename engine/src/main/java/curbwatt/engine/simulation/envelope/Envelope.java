package curbwatt.engine.simulation.envelope;

import curbwatt.engine.simulation.book.RunBook;
import curbwatt.engine.simulation.device.Actions;
import curbwatt.engine.simulation.device.CalmWatch;
import curbwatt.engine.simulation.device.EngineWatch;
import curbwatt.engine.simulation.network.Network;
import curbwatt.engine.simulation.part.Batteries;
import curbwatt.engine.simulation.part.EngineState;
import curbwatt.engine.simulation.part.LoadBank;
import curbwatt.engine.simulation.part.LoadState;
import curbwatt.engine.simulation.part.OperatingPoint;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Decides when a long step may be taken, and how long it is.
 *
 * <p>Nothing but the flashes of {@link FlashPattern} may switch in it. After anything else has, edges are followed one by one
 * until all inrush is over; before anything might, likewise.
 */
public final class Envelope {

    /** Steps under this length are left to the time loop (s). */
    private static final double SHORTEST_S = 0.005;
    /** The same where slow edges alone are waited for: a shorter one costs more than the time loop's own (s). */
    private static final double SHORTEST_BETWEEN_EDGES_S = 10;
    /** Fewest turns of the slowest clock in a long step: what is averaged over is each clock, not their common cycle. */
    private static final double FEWEST_TURNS = 1;
    /** Longest step (s): a quarter of the slowest mode of a battery. */
    private static final double LONGEST_S = 7200;
    /** Length tried first after a change (s). */
    private static final double FIRST_S = 30;
    /** Longest time before it is tried again, after it could not be done (s). */
    private static final double LONGEST_WAIT_S = 2;

    /** A switching at the end belongs to the next step: what the end shows is what held this long before (s). */
    static final double BEFORE_EDGE_S = 2e-6;

    private final LoadBank bank;
    private final EngineState engine;
    private final Batteries batteries;
    private final LongStep step;
    private final CalmWatch calm;
    private final DevicePass pass;
    private final LongStepEntry entry;
    private final RunAhead runAhead = new RunAhead();
    private long seenChanges = -1;
    private boolean ready;
    private double notBeforeS;
    private double waitS = SHORTEST_S;
    private FlashCombinations combinations;
    /** Loads that are not averaged over, and what they drew when the pattern was made. */
    private List<LoadState> edged = List.of();

    private double[] edgedFactors = new double[0];
    private final Map<List<Double>, FlashPattern> patterns = new HashMap<>();

    /**
     * Makes an envelope.
     *
     * @param toleranceV how far a voltage between solved instants may be off (V)
     */
    public Envelope(
            LoadBank bank,
            EngineState engine,
            Batteries batteries,
            Network network,
            Actions actions,
            EngineWatch watch,
            CalmWatch calm,
            double toleranceV) {
        this.bank = bank;
        this.engine = engine;
        this.batteries = batteries;
        this.calm = calm;
        int circuits = bank.circuits.size();
        step = new LongStep(network, engine, batteries, circuits, toleranceV);
        pass = new DevicePass(step, actions, watch, calm, engine, bank.circuits, toleranceV);
        entry = new LongStepEntry(step, batteries, engine, circuits);
    }

    /** Something has happened that the loads do not know of: what is being followed begins anew. */
    public void interrupt() {
        if (ready) {
            step.interrupt(FIRST_S);
        }
    }

    /**
     * Finds a long step and shows it to the devices; its length (s), 0: none, edges are to be followed one by one.
     *
     * @param endS where it has to end at the latest (s)
     * @param guess a solution near the present one
     */
    public double tryFrom(double timeS, double endS, OperatingPoint guess) {
        if (bank.changes() != seenChanges) {
            seenChanges = bank.changes();
            ready = false;
            notBeforeS = bank.changedS() + bank.longestSurgeS();
        }
        if (timeS < notBeforeS) {
            return 0;
        }
        if (!ready) {
            combinations = new FlashCombinations(bank, timeS);
            edged = combinations.others();
            edgedFactors = new double[edged.size()];
            patterns.clear();
        }
        if (edgesPassed() || !ready) {
            begin();
        }
        if (timeS > combinations.holdsUntilS() - FEWEST_TURNS * step.pattern().slowestS()) {
            combinations.moveTo(timeS);
            patterns.clear();
            begin();
        }
        double shortestS = step.pattern().isSteady() && !edged.isEmpty()
                ? SHORTEST_BETWEEN_EDGES_S
                : Math.max(SHORTEST_S, FEWEST_TURNS * step.pattern().slowestS());
        double longestS =
                Math.min(LONGEST_S, Math.min(Math.min(endS, combinations.holdsUntilS()), nextEdgeS()) - timeS);
        longestS = Math.min(longestS, engine.straightForS(timeS));
        if (longestS < shortestS) {
            notBeforeS = timeS + longestS;
            return 0;
        }
        double lengthS = step.tryFrom(timeS, longestS, shortestS, guess);
        if (lengthS > 0) {
            lengthS = whileRestartIsPlain(lengthS, shortestS);
        }
        if (lengthS > 0) {
            lengthS = pass.shown(timeS, lengthS, shortestS);
            notBeforeS = pass.resumesS();
        }
        waitS = lengthS > 0 ? shortestS : Math.min(LONGEST_WAIT_S, 2 * waitS);
        if (lengthS == 0) {
            notBeforeS = timeS + waitS;
        }
        return lengthS;
    }

    /** Cuts a step before it becomes doubtful whether the engine would start: edge by edge tells the time (s). */
    private double whileRestartIsPlain(double lengthS, double shortestS) {
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
        List<Double> key = Arrays.stream(edgedFactors).boxed().toList();
        FlashPattern pattern = patterns.computeIfAbsent(key, combinations::pattern);
        step.begin(pattern, FIRST_S);
        pass.begin(pattern);
        ready = true;
    }

    private double nextEdgeS() {
        long nextNs = Long.MAX_VALUE;
        for (int i = 0; i < edged.size(); i++) {
            nextNs = Math.min(nextNs, edged.get(i).nextChangeNs());
        }
        return nextNs == Long.MAX_VALUE ? Double.POSITIVE_INFINITY : nextNs / 1e9;
    }

    /** Adds the step found to the books. */
    public void addTo(RunBook book) {
        entry.addTo(book);
    }

    /**
     * Moves the batteries to the end of the step found.
     *
     * @param end filled with what holds there
     */
    public void take(OperatingPoint end) {
        step.at(step.startS() + step.lengthS() - BEFORE_EDGE_S, end);
        batteries.takeFrom(step.states().end);
        runAhead.correct(batteries, step);
    }

    LongStep step() {
        return step;
    }
}
