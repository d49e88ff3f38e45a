package curbwatt.engine.simulation.clock;

/** Counts how long a reading has been beyond a level without a break. */
public final class LevelTimer implements LevelCount {

    /** Shortest time before a supply comes back (s); our choice. */
    public static final double LEAST_RETURN_S = 0.1;

    private static final double NOT_BEYOND = -1;

    private final boolean below;
    private final double levelV;
    private final double delayS;
    /** Whether no reading comes to its level. */
    private final boolean isNever;

    private double heldS = NOT_BEYOND;

    private LevelTimer(boolean below, double levelV, double delayS) {
        this.below = below;
        this.levelV = levelV;
        this.delayS = delayS;
        isNever = Double.isInfinite(levelV);
    }

    public static LevelTimer below(double levelV, double delayS) {
        return new LevelTimer(true, levelV, delayS);
    }

    public static LevelTimer above(double levelV, double delayS) {
        return new LevelTimer(false, levelV, delayS);
    }

    /**
     * As {@link #above}, for what gives a supply back: a delay of nothing is taken as the time a contact needs, or a
     * load that sags its own supply could switch without end in one instant.
     */
    public static LevelTimer returning(double levelV, double delayS) {
        return above(levelV, Math.max(delayS, LEAST_RETURN_S));
    }

    public void reset() {
        heldS = NOT_BEYOND;
    }

    /** Time in the step at which the delay is over; positive infinity if not in this step (s). */
    public double expiryS(Reading reading) {
        if (isNever) {
            return Double.POSITIVE_INFINITY;
        }
        double turnS = reading.turnS();
        double startHeldS = isBeyond(reading.at(0)) ? Math.max(heldS, 0) : NOT_BEYOND;
        double expiryS = expiryS(reading, 0, turnS, startHeldS);
        return expiryS < Double.POSITIVE_INFINITY || turnS == reading.lengthS()
                ? expiryS
                : expiryS(reading, turnS, reading.lengthS(), heldAfter(reading, 0, turnS, startHeldS));
    }

    /** Takes note of a step that was taken. */
    public void advance(Reading reading) {
        if (isNever) {
            return;
        }
        double turnS = reading.turnS();
        double startHeldS = isBeyond(reading.at(0)) ? Math.max(heldS, 0) : NOT_BEYOND;
        heldS = heldAfter(reading, 0, turnS, startHeldS);
        if (turnS < reading.lengthS()) {
            heldS = heldAfter(reading, turnS, reading.lengthS(), heldS);
        }
    }

    /**
     * Time for which readings between two bounds leave it as it is: counting on, or not counting; 0: they lie on both
     * sides of its level (s).
     */
    public double calmForS(double lowestV, double highestV) {
        if (isWithin(lowestV, highestV)) {
            return 0;
        }
        return isBeyond(lowestV) ? Math.max(0, delayS - countedS()) : Double.POSITIVE_INFINITY;
    }

    /** Takes note of a time through which all readings were on the side of one. */
    public void advanceCalm(double readingV, double durationS) {
        heldS = isBeyond(readingV) ? Math.max(heldS, 0) + durationS : NOT_BEYOND;
    }

    /** Time for which a cycle just passed may be repeated before the delay is over (s). */
    public double repeatsForS(double cycleS) {
        return heldS >= cycleS ? Math.max(0, delayS - heldS) : Double.POSITIVE_INFINITY;
    }

    /** Takes note of whole cycles like the one just passed: what counted through all of it counts on. */
    public void repeat(double cycleS, double durationS) {
        if (heldS >= cycleS) {
            heldS += durationS;
        }
    }

    @Override
    public double countedS() {
        return Math.max(heldS, 0);
    }

    @Override
    public double delayS() {
        return delayS;
    }

    /** Level that it compares with (V). */
    public double levelV() {
        return levelV;
    }

    private double expiryS(Reading reading, double fromS, double toS, double startHeldS) {
        boolean endsBeyond = isBeyond(reading.at(toS));
        if (startHeldS < 0) {
            if (!endsBeyond) {
                return Double.POSITIVE_INFINITY;
            }
            double enteredS = reading.crossingS(fromS, toS, levelV);
            return toS - enteredS >= delayS ? enteredS + delayS : Double.POSITIVE_INFINITY;
        }
        double leftS = endsBeyond ? toS : reading.crossingS(fromS, toS, levelV);
        return startHeldS + leftS - fromS >= delayS
                ? fromS + Math.max(0, delayS - startHeldS)
                : Double.POSITIVE_INFINITY;
    }

    private double heldAfter(Reading reading, double fromS, double toS, double startHeldS) {
        if (!isBeyond(reading.at(toS))) {
            return NOT_BEYOND;
        }
        return startHeldS < 0 ? toS - reading.crossingS(fromS, toS, levelV) : startHeldS + toS - fromS;
    }

    @Override
    public boolean isBeyond(double voltageV) {
        return below ? voltageV < levelV : voltageV >= levelV;
    }
}
