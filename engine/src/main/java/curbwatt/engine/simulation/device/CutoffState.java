package curbwatt.engine.simulation.device;

import curbwatt.engine.control.LowVoltageCutoff;
import curbwatt.engine.control.RecloseRule;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.simulation.clock.LevelTimer;
import curbwatt.engine.simulation.clock.Reading;

/** One cutoff between steps: its filter, its timers, its contact. */
public final class CutoffState {

    /** How long the reading must stay above the warning level before a warning ends (s): longer than the pauses of
     * a radio; our choice. */
    private static final double WARNING_CLEAR_S = 300;

    public final LowVoltageCutoff settings;
    private final Reading reading;
    private final LevelTimer tripTimer;
    private final LevelTimer warningTimer;
    private final LevelTimer clearTimer;
    private final LevelTimer recloseTimer;
    private double filteredV = Double.NaN;
    private boolean open;
    private boolean openedByLimit;
    private boolean warned;
    private EventKind pending = EventKind.WARNING_BEGAN;
    private double engineOffS;

    public CutoffState(LowVoltageCutoff settings) {
        this.settings = settings;
        reading = new Reading(settings.filterTimeConstantS());
        tripTimer = LevelTimer.below(settings.tripV(), settings.tripDelayS());
        double warningV = settings.warningV().orElse(Double.NEGATIVE_INFINITY);
        warningTimer = LevelTimer.below(warningV, 0);
        clearTimer = LevelTimer.above(warningV, WARNING_CLEAR_S);
        recloseTimer = settings.reclose() instanceof RecloseRule.AboveVoltage above
                ? LevelTimer.returning(above.levelV(), above.delayS())
                : LevelTimer.above(Double.POSITIVE_INFINITY, 0);
    }

    public boolean isOpen() {
        return open;
    }

    /** Shows it the sensed voltage of a step that may be taken. */
    public void sense(double lengthS, double sensedStartV, double sensedEndV) {
        double startV = sensedStartV + settings.sensorErrorV();
        if (Double.isNaN(filteredV)) {
            filteredV = startV;
        }
        reading.set(lengthS, startV, sensedEndV + settings.sensorErrorV(), filteredV);
    }

    /** Reading at the start of the step shown (V). */
    public double readingStartV() {
        return reading.at(0);
    }

    /** Reading at the end of the step shown (V). */
    public double readingEndV() {
        return reading.at(reading.lengthS());
    }

    /** Time in the step shown at which it acts next; positive infinity: not in this step (s). */
    public double nextActionS(boolean engineRuns) {
        double switchS;
        if (open) {
            switchS = openedByLimit ? Double.POSITIVE_INFINITY : recloseTimer.expiryS(reading);
            pending = EventKind.CUTOFF_RECLOSED;
        } else {
            double tripS = tripTimer.expiryS(reading);
            double limitS = limitS(engineRuns);
            switchS = Math.min(tripS, limitS);
            pending = limitS < tripS ? EventKind.RUN_TIME_LIMIT_REACHED : EventKind.CUTOFF_TRIPPED;
        }
        double warningS = warned ? clearTimer.expiryS(reading) : warningTimer.expiryS(reading);
        if (warningS < switchS) {
            pending = warned ? EventKind.WARNING_ENDED : EventKind.WARNING_BEGAN;
            return warningS;
        }
        return switchS;
    }

    private double limitS(boolean engineRuns) {
        return engineRuns || settings.runTimeLimitS().isEmpty()
                ? Double.POSITIVE_INFINITY
                : Math.max(0, settings.runTimeLimitS().getAsDouble() - engineOffS);
    }

    /** Does what {@link #nextActionS} announced, after the step up to there has been taken note of. */
    public EventKind act() {
        switch (pending) {
            case CUTOFF_RECLOSED -> close();
            case CUTOFF_TRIPPED, RUN_TIME_LIMIT_REACHED -> {
                open = true;
                openedByLimit = pending == EventKind.RUN_TIME_LIMIT_REACHED;
                recloseTimer.reset();
            }
            default -> {
                warned = !warned;
                warningTimer.reset();
                clearTimer.reset();
            }
        }
        return pending;
    }

    /** Closes the contact because the engine runs, if that is its rule or a run-time limit had opened it. */
    boolean closesOnEngine() {
        boolean byHand = settings.reclose() instanceof RecloseRule.ByHand;
        boolean onEngine = settings.reclose() instanceof RecloseRule.EngineRunning;
        if (open && !byHand && (onEngine || openedByLimit)) {
            close();
            return true;
        }
        return false;
    }

    private void close() {
        open = false;
        openedByLimit = false;
        tripTimer.reset();
        engineOffS = 0;
    }

    /** Takes note of the step shown. */
    public void advance(boolean engineRuns) {
        for (int t = 0; t < pendingTimers(); t++) {
            pendingTimer(t).advance(reading);
        }
        filteredV = readingEndV();
        engineOffS = engineRuns ? 0 : engineOffS + reading.lengthS();
    }

    /** Whether its reading follows the voltage late. */
    public boolean isFiltered() {
        return settings.filterTimeConstantS() > 0;
    }

    /** Reading at the end of the last step (V); not a number before the first. */
    public double filteredV() {
        return filteredV;
    }

    /** Number of timers that count at present. */
    public int pendingTimers() {
        return openedByLimit ? 1 : 2;
    }

    /** One of the timers that count at present: that of the warning, then that of the contact. */
    public LevelTimer pendingTimer(int number) {
        if (number == 0) {
            return warned ? clearTimer : warningTimer;
        }
        return open ? recloseTimer : tripTimer;
    }

    /** Whether a level that it compares its reading with at present lies between two bounds. */
    public boolean comparesWithin(double lowestV, double highestV) {
        for (int t = 0; t < pendingTimers(); t++) {
            if (pendingTimer(t).isWithin(lowestV, highestV)) {
                return true;
            }
        }
        return false;
    }

    /** Highest level not above a reading that it compares with at present; negative infinity: none (V). */
    public double levelBelowV(double readingV) {
        double levelV = Double.NEGATIVE_INFINITY;
        for (int t = 0; t < pendingTimers(); t++) {
            double ownV = pendingTimer(t).levelV();
            levelV = ownV <= readingV ? Math.max(levelV, ownV) : levelV;
        }
        return levelV;
    }

    /** Lowest level above a reading that it compares with at present; positive infinity: none (V). */
    public double levelAboveV(double readingV) {
        double levelV = Double.POSITIVE_INFINITY;
        for (int t = 0; t < pendingTimers(); t++) {
            double ownV = pendingTimer(t).levelV();
            levelV = ownV > readingV ? Math.min(levelV, ownV) : levelV;
        }
        return levelV;
    }

    /** Time for which readings between two bounds make it do nothing (s); 0: it might act, or start or stop counting. */
    public double calmForS(double lowestV, double highestV, boolean engineRuns) {
        double calmS = open ? Double.POSITIVE_INFINITY : limitS(engineRuns);
        for (int t = 0; t < pendingTimers(); t++) {
            calmS = Math.min(calmS, pendingTimer(t).calmForS(lowestV, highestV));
        }
        return calmS;
    }

    /** As {@link #calmForS}, for timers whose level does not lie between the bounds. */
    double calmElsewhereForS(double lowestV, double highestV, boolean engineRuns) {
        double calmS = open ? Double.POSITIVE_INFINITY : limitS(engineRuns);
        for (int t = 0; t < pendingTimers(); t++) {
            if (!pendingTimer(t).isWithin(lowestV, highestV)) {
                calmS = Math.min(calmS, pendingTimer(t).calmForS(lowestV, highestV));
            }
        }
        return calmS;
    }

    /** Takes note of a time through which {@link #calmForS} held, with one of the readings and the last. */
    public void advanceCalm(double durationS, double readingV, double endV, boolean engineRuns) {
        for (int t = 0; t < pendingTimers(); t++) {
            pendingTimer(t).advanceCalm(readingV, durationS);
        }
        filteredV = endV;
        engineOffS = engineRuns ? 0 : engineOffS + durationS;
    }

    /** Time for which the cycle just passed may be repeated without an act (s). */
    double repeatsForS(double cycleS, boolean engineRuns) {
        double timerS = Math.min(
                (open ? recloseTimer : tripTimer).repeatsForS(cycleS),
                (warned ? clearTimer : warningTimer).repeatsForS(cycleS));
        return open ? timerS : Math.min(timerS, limitS(engineRuns));
    }

    /** Takes note of whole cycles like the one just passed, and of the reading after them. */
    void repeat(double cycleS, double durationS, double endV, boolean engineRuns) {
        for (int t = 0; t < pendingTimers(); t++) {
            pendingTimer(t).repeat(cycleS, durationS);
        }
        filteredV = endV;
        engineOffS = engineRuns ? 0 : engineOffS + durationS;
    }

    /** Level that switches its contact at present (V). */
    double switchLevelV() {
        return pendingTimer(1).levelV();
    }

    /** Level at which its warning begins or ends (V). */
    double warningLevelV() {
        return warningTimer.levelV();
    }
}
