package curbwatt.engine.simulation.part;

import curbwatt.engine.load.Load;
import curbwatt.engine.simulation.clock.EdgeTrain;
import curbwatt.engine.simulation.clock.LevelTimer;

/** One load between steps: wanted by its stage, lit by its pattern, silent because its voltage fell too low. */
public final class LoadState {

    public final Load load;
    public final EdgeTrain cycle;
    private static final double NS_PER_S = 1e9;

    private final LevelTimer dropTimer;
    private final LevelTimer returnTimer;
    private boolean drawing;
    private long surgeEndNs = EdgeTrain.NEVER;
    public boolean wanted;
    public boolean droppedOut;
    public double firstDropOutS = Double.NaN;
    public int dropOuts;
    public double droppedOutS;

    public LoadState(Load load) {
        this.load = load;
        this.cycle = EdgeTrain.of(load.pattern());
        this.dropTimer = LevelTimer.below(load.dropOut().levelV(), 0);
        this.returnTimer =
                LevelTimer.returning(load.dropOut().returnV(), load.dropOut().returnDelayS());
    }

    /** Whether what it draws ever changes by itself: it has edges, or an inrush. */
    boolean isTimed() {
        return cycle.nextEdgeNs() != EdgeTrain.NEVER || load.inrush().isPossible();
    }

    /** Whether it draws its rated current. */
    public boolean isLit() {
        return wanted && cycle.isLit() && !droppedOut;
    }

    /** Notes whether it draws its rated current at a time; where that begins, its inrush begins. */
    public void note(boolean fed, long timeNs) {
        boolean draws = fed && isLit();
        if (!draws) {
            surgeEndNs = EdgeTrain.NEVER;
        } else if (!drawing && load.inrush().isPossible()) {
            surgeEndNs = timeNs + surgeNs();
        }
        drawing = draws;
        if (surgeEndNs <= timeNs) {
            surgeEndNs = EdgeTrain.NEVER;
        }
    }

    /** Multiple of its rated current that it draws at present; 0: not lit. */
    public double presentFactor() {
        return isLit() ? surgeFactor() : 0;
    }

    /** Takes up an inrush that began while the edges were passed over, if it has not ended yet. */
    void resume(long onsetNs, long timeNs) {
        drawing = isLit();
        long endNs = onsetNs + surgeNs();
        surgeEndNs = drawing && endNs > timeNs ? endNs : EdgeTrain.NEVER;
    }

    /** Length of its inrush (ns); 0: it has none. */
    public long surgeNs() {
        return load.inrush().isPossible() ? Math.round(load.inrush().durationS() * NS_PER_S) : 0;
    }

    /** End of its inrush; never: it has none at present (ns). */
    long surgeEndNs() {
        return surgeEndNs;
    }

    /** Multiple of the rated current that it draws. */
    double surgeFactor() {
        return surgeEndNs == EdgeTrain.NEVER ? 1 : load.inrush().multipleFactor();
    }

    /** Time of the next change of what it draws: an edge of its pattern or the end of its inrush (ns). */
    public long nextChangeNs() {
        return Math.min(cycle.nextEdgeNs(), surgeEndNs);
    }

    /** Current that it draws when not lit but fed (A). */
    double restingA() {
        if (droppedOut) {
            return 0;
        }
        return wanted ? load.betweenCurrentA() : load.standbyCurrentA();
    }

    public boolean mayDropOut() {
        return load.dropOut().isPossible() && isLit();
    }

    public void dropOut(double timeS) {
        droppedOut = true;
        dropOuts++;
        if (Double.isNaN(firstDropOutS)) {
            firstDropOutS = timeS;
        }
        returnTimer.reset();
    }

    /** Says at once when the voltage falls below the drop-out level. */
    public LevelTimer dropTimer() {
        return dropTimer;
    }

    public LevelTimer returnTimer() {
        return returnTimer;
    }
}
