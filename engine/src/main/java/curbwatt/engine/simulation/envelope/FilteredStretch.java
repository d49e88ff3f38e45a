package curbwatt.engine.simulation.envelope;

import curbwatt.engine.simulation.device.Actions;
import curbwatt.engine.simulation.device.CalmWatch;
import curbwatt.engine.simulation.device.CutoffState;
import curbwatt.engine.simulation.network.SenseTap;
import curbwatt.engine.simulation.part.EngineState;
import curbwatt.engine.simulation.part.OperatingPoint;
import java.util.stream.IntStream;

/**
 * Shows cutoffs that filter, and them alone, the waveform of a long step, while everything else is calm.
 *
 * <p>A filter's ripple crosses a level for some cycles, in a few segments of each. Only there a cutoff is shown the segment;
 * where its reading stays plainly on one side it is told how long. That takes a tenth of the time of showing all devices all.
 */
final class FilteredStretch {

    /** A reading nearer to a level than this, or than its input moves in the segment, may come to it (V). */
    private static final double PLAINLY_V = 1e-7;
    /** A delay that ends is looked at from this long before (s). */
    private static final double BEFORE_S = 1e-3;

    private static final double SAME_TIME_S = 1e-9;

    private final Actions actions;
    private final CalmWatch calm;
    private final EngineState engine;
    private final Bounds bounds;
    private final Ripples ripples;
    /** Places of the cutoffs that filter. */
    private final int[] filtered;

    private final double[] inV;
    private final double[] lastInV;
    private final double[] readingV;
    private final double[] nextV;
    private final OperatingPoint first;
    private final OperatingPoint last;
    private LongStep step;
    private double untilS;
    /** Since when the cutoffs have not been told of their readings (s). */
    private double toldS;
    /** When the first of their delays is over, if their readings stay where they are (s). */
    private double delayedS;

    FilteredStretch(Actions actions, CalmWatch calm, EngineState engine, Bounds bounds, Ripples ripples, int circuits) {
        this.actions = actions;
        this.calm = calm;
        this.engine = engine;
        this.bounds = bounds;
        this.ripples = ripples;
        int cutoffs = actions.cutoffs().size();
        filtered = IntStream.range(0, cutoffs)
                .filter(i -> actions.cutoffs().get(i).isFiltered())
                .toArray();
        inV = new double[cutoffs];
        lastInV = new double[cutoffs];
        readingV = new double[cutoffs];
        nextV = new double[cutoffs];
        first = new OperatingPoint(circuits);
        last = new OperatingPoint(circuits);
    }

    /** Begins a step at a time (s). */
    void begin(LongStep next, double atS) {
        step = next;
        untilS = atS;
        if (next.pattern().isSteady()) {
            return;
        }
        for (int i : filtered) {
            if (Double.isNaN(cutoff(i).filteredV())) {
                return;
            }
            bounds.filter(i)
                    .layParabolas(next, actions.tap(i), cutoff(i).settings.sensorErrorV());
        }
        if (filtered.length > 0) {
            untilS = atS + calm.calmBesideFiltersForS(atS) - BEFORE_S;
        }
    }

    /** Follows from a time to where something might act, or to an end; the time reached (s). */
    double follow(double fromS, double endS) {
        if (fromS >= untilS) {
            return fromS;
        }
        FlashPattern pattern = step.pattern();
        double atS = fromS;
        turnTo(atS);
        while (endS - atS > SAME_TIME_S) {
            double toS = Math.min(pattern.endS(), endS);
            if (toS > untilS || !take(atS, toS)) {
                break;
            }
            ripples.advance(pattern.combination(), toS - atS);
            atS = toS;
            pattern.next();
        }
        if (atS > fromS) {
            tell(atS);
            step.at(fromS, first);
            step.at(atS - Envelope.BEFORE_EDGE_S, last);
            calm.advanceBesideFilters(fromS, atS, first, last);
            pattern.seek(atS);
        }
        return atS;
    }

    /** Takes a segment; false: a cutoff acts in it. */
    private boolean take(double atS, double toS) {
        boolean plain = toS <= delayedS;
        for (int i : filtered) {
            look(i, atS, toS);
            double nearV = PLAINLY_V + Math.abs(lastInV[i] - inV[i]);
            double lowV = Math.min(readingV[i], nextV[i]) - nearV;
            double highV = Math.max(readingV[i], nextV[i]) + nearV;
            plain &= !cutoff(i).comparesWithin(lowV, highV);
        }
        if (!plain) {
            return show(atS, toS);
        }
        for (int i : filtered) {
            readingV[i] = nextV[i];
        }
        return true;
    }

    /** Looks at what goes into a cutoff's filter in a segment, and what comes out at its end. */
    private void look(int i, double atS, double toS) {
        FlashPattern pattern = step.pattern();
        int combination = pattern.combination();
        Filter filter = bounds.filter(i);
        SenseTap tap = actions.tap(i);
        double lengthS = toS - atS;
        inV[i] = filter.inV(combination, share(atS)) + ripples.inV(tap, combination, 0);
        lastInV[i] = filter.inV(combination, share(toS)) + ripples.inV(tap, combination, lengthS);
        double lagV = (lastInV[i] - inV[i]) / lengthS * filter.timeConstantS();
        nextV[i] = lastInV[i] - lagV + (readingV[i] - inV[i] + lagV) * filter.keeps(pattern.segment(), lengthS);
    }

    /** Shows the cutoffs a segment; false: one acts in it. */
    private boolean show(double atS, double toS) {
        tell(atS);
        boolean runs = engine.runs();
        for (int i : filtered) {
            double errorV = cutoff(i).settings.sensorErrorV();
            cutoff(i).sense(toS - atS, inV[i] - errorV, lastInV[i] - errorV);
            if (cutoff(i).nextActionS(runs) <= toS - atS) {
                return false;
            }
        }
        for (int i : filtered) {
            cutoff(i).advance(runs);
        }
        turnTo(toS);
        return true;
    }

    /** Tells the cutoffs of their readings since they were last told, all of them on the side of the present one. */
    private void tell(double atS) {
        for (int i : filtered) {
            if (atS > toldS) {
                cutoff(i).advanceCalm(atS - toldS, readingV[i], readingV[i], engine.runs());
            }
        }
        toldS = atS;
    }

    /** Takes up the cutoffs' readings as they are at a time. */
    private void turnTo(double atS) {
        toldS = atS;
        delayedS = Double.POSITIVE_INFINITY;
        for (int i : filtered) {
            readingV[i] = cutoff(i).filteredV();
            double calmS = cutoff(i).calmForS(readingV[i], readingV[i], engine.runs());
            delayedS = Math.min(delayedS, atS + calmS - BEFORE_S);
        }
    }

    private CutoffState cutoff(int place) {
        return actions.cutoffs().get(place);
    }

    private double share(double timeS) {
        return (timeS - step.startS()) / step.lengthS();
    }
}
