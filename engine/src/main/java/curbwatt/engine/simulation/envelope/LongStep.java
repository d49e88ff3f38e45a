package curbwatt.engine.simulation.envelope;

import curbwatt.engine.simulation.network.Network;
import curbwatt.engine.simulation.part.Batteries;
import curbwatt.engine.simulation.part.EngineState;
import curbwatt.engine.simulation.part.OperatingPoint;

/**
 * The arithmetic of one long step: batteries moved by the mean over the combinations, the network solved at start, middle
 * and end, everything else between on parabolas.
 *
 * <p>The parabola of the mean current is guessed (the last step's goes on), the batteries are moved by it, exactly, to
 * middle and end, the network is solved there, and the parabola through the solutions moves them again. The guess is good
 * enough if both end in the same state. The step is short enough if, at its first quarter, the voltage on the parabola is
 * the solved one.
 */
final class LongStep {

    /** Share of the capacity by which guess and result may differ: 1e-6 moves a voltage by 1 µV. */
    private static final double SAME_STATE = 1e-6;

    /** Share of the capacity by which the gassing of a step may be off. */
    private static final double GASSED_SHARE = 3e-10;

    private static final double SECONDS_PER_HOUR = 3600;
    private static final int MOST_ROUNDS = 3;
    /** Share of what is allowed that a step uses which has a solution but no parabola. */
    private static final double FAR_TOO_LONG = 1e6;

    private static final double QUARTER = 0.25;

    private final Network network;
    private final EngineState engine;
    private final double toleranceV;
    private final Batteries batteries;
    private final MovedBatteries moved;
    private final OperatingPoint quarter;
    private final Stages stages;
    private FlashPattern pattern;
    private double[] shares = new double[0];
    private final Segments told = new Segments();
    private double startS;
    private double lengthS;
    private final StepLength length = new StepLength();
    /** Length of the step before, if this one goes on from it; otherwise 0 (s). */
    private double lastS;

    private boolean goesOn;
    /** Share of the capacity by which the last round moved the step's end. */
    private double movedShare;
    /** Share of the usual tolerance that the present solutions are off their parabola; below 0: not asked yet. */
    private double bentShare;
    /** Share of the tolerances that is asked at present. */
    private double tolerance = 1;

    LongStep(Network network, EngineState engine, Batteries batteries, int circuits, double toleranceV) {
        this.network = network;
        this.engine = engine;
        this.batteries = batteries;
        this.toleranceV = toleranceV;
        stages = new Stages(circuits);
        moved = new MovedBatteries(batteries, engine);
        quarter = new OperatingPoint(circuits);
    }

    /** Begins with another pattern. */
    void begin(FlashPattern next, double firstS) {
        pattern = next;
        stages.makeRoom(next.size());
        if (shares.length != next.size()) {
            shares = new double[next.size()];
        }
        interrupt(firstS);
    }

    /** Goes on with the next window of a pattern, whose combinations are the same. */
    void goOn(FlashPattern next) {
        pattern = next;
    }

    /** Something happened since the last step: nothing of it goes on. */
    void interrupt(double firstS) {
        goesOn = false;
        length.begin(firstS);
    }

    /** Whether the next step begins where this one ended, with nothing between. */
    private boolean follows(double timeS) {
        return goesOn && Math.abs(timeS - (startS + lengthS)) < 1e-9;
    }

    /**
     * Finds a step that is exact enough (s); 0: none as long as the shortest is.
     *
     * @param guess a solution near the present one, to start from
     */
    double tryFrom(double timeS, double longestS, double shortestS, OperatingPoint guess) {
        boolean follows = follows(timeS);
        lastS = follows ? lengthS : 0;
        startS = timeS;
        if (follows) {
            stages.goOn();
        } else {
            stages.guessStart(guess);
            if (!stages.start.solve(network, pattern, batteries, engine, timeS)) {
                return 0;
            }
            stages.guessAlike();
        }
        moved.keepCurrents();
        return find(Math.min(longestS, Math.max(length.proposedS(), shortestS)), shortestS);
    }

    /** Takes the same step again, shorter, after the devices were shown it up to there. */
    void shorten(double shorterS) {
        lengthS = shorterS;
        double used = used(shorterS);
        if (used == Double.POSITIVE_INFINITY) {
            throw new IllegalStateException(
                    "no operating point on the way of a step that had one, at " + startS + " s");
        }
        goesOn = true;
    }

    /** Lets the next step begin with no more than a length (s). */
    void propose(double atMostS) {
        length.propose(atMostS);
    }

    /** Makes the step found as exact as a share of the tolerance asks, shorter where it must be; its length (s). */
    double refine(double longestS, double share) {
        tolerance = share;
        boolean goodAlready = longestS == lengthS && settled() <= 1;
        double refinedS = goodAlready ? lengthS : find(longestS, 0.02 * longestS);
        tolerance = 1;
        return refinedS > 0 ? refinedS : find(0.02 * longestS, 0.01 * longestS);
    }

    private double find(double firstS, double shortestS) {
        double tryS = firstS;
        while (tryS >= shortestS) {
            lengthS = tryS;
            double used = used(tryS);
            if (used <= 1) {
                goesOn = true;
                length.accept(tryS, used, tolerance);
                return tryS;
            }
            tryS = length.shorter(tryS, used);
        }
        goesOn = false;
        return 0;
    }

    /** Tries the length set; share of what is allowed that it used, above 1: too long. */
    private double used(double tryS) {
        if (tellsAll()) {
            telling().shares(shares);
        } else {
            pattern.shares(startS, startS + lengthS, shares);
        }
        stages.start.average(shares, batteries);
        double timesAsLong = lastS > 0 ? tryS / lastS : 0;
        stages.guessAhead(timesAsLong);
        moved.guess(startS, lengthS, stages.start, timesAsLong);
        movedShare = Double.POSITIVE_INFINITY;
        return settled();
    }

    /** Goes round until guess and result agree; share of what is allowed that the step used, above 1: too long. */
    private double settled() {
        for (int i = 0; i < MOST_ROUNDS && movedShare > tolerance * SAME_STATE; i++) {
            if (!solveAhead()) {
                return Double.POSITIVE_INFINITY;
            }
            movedShare = moved.fit(stages.start, stages.middle, stages.end);
            bentShare = -1;
        }
        if (movedShare > tolerance * SAME_STATE || moved.passFull(stages.start)) {
            return FAR_TOO_LONG;
        }
        bentShare = bentShare < 0 ? bent() : bentShare;
        return bentShare / tolerance;
    }

    private boolean solveAhead() {
        // a hair before the end: a switching at the end belongs to the next step
        boolean solved = stages.middle.solve(network, pattern, moved.middle, engine, startS + 0.5 * lengthS)
                && stages.end.solve(network, pattern, moved.end, engine, startS + lengthS - 2e-6);
        if (solved) {
            stages.middle.average(shares, batteries);
            stages.end.average(shares, batteries);
        }
        return solved;
    }

    /**
     * How far, at the first quarter, the combination that bends most is off its parabola, as a share of what is allowed: in
     * voltage, and in gassing, which grows so steeply with it.
     */
    private double bent() {
        int bent = stages.bentMost();
        at(bent, QUARTER, quarter);
        double starterV = quarter.starter.nodeV;
        double equipmentV = quarter.equipment.nodeV;
        double gasA = quarter.starter.gasA + quarter.equipment.gasA;
        pattern.suppose(bent);
        network.solve(moved.at(QUARTER), engine, startS + QUARTER * lengthS, quarter);
        pattern.supposeNothing();
        double offV =
                Math.max(Math.abs(quarter.starter.nodeV - starterV), Math.abs(quarter.equipment.nodeV - equipmentV));
        double offAh = Math.abs(quarter.starter.gasA + quarter.equipment.gasA - gasA) * lengthS / SECONDS_PER_HOUR;
        return Math.max(
                offV / toleranceV,
                offAh / (GASSED_SHARE * batteries.starter().battery.capacityAh()));
    }

    /** Fills in what holds in a combination at a share of the step. */
    void at(int combination, double share, OperatingPoint point) {
        stages.at(combination, share, point);
    }

    /** Fills in what devices sense in a combination at a share of the step. */
    void sensedAt(int combination, double share, OperatingPoint point) {
        stages.sensedAt(combination, share, point);
    }

    /** What holds at a time in the step, in the combination then lit. */
    void at(double timeS, OperatingPoint point) {
        pattern.seek(timeS);
        at(pattern.combination(), (timeS - startS) / lengthS, point);
    }

    FlashPattern pattern() {
        return pattern;
    }

    Stage start() {
        return stages.start;
    }

    Stage middle() {
        return stages.middle;
    }

    Stage end() {
        return stages.end;
    }

    /** The batteries along the step. */
    MovedBatteries states() {
        return moved;
    }

    double share(int combination) {
        return shares[combination];
    }

    /** The segments of the part of the step that tells how it moves the batteries: all of it, or its first cycle. */
    Segments telling() {
        told.take(pattern, startS, startS + pattern.tellingS(lengthS));
        return told;
    }

    /** Whether those are all segments of the step. */
    boolean tellsAll() {
        return pattern.tellingS(lengthS) == lengthS;
    }

    double toleranceV() {
        return toleranceV;
    }

    double startS() {
        return startS;
    }

    double lengthS() {
        return lengthS;
    }
}
