package curbwatt.engine.simulation.envelope;

import curbwatt.engine.simulation.device.Actions;
import curbwatt.engine.simulation.device.CalmWatch;
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

    /** A delay that ends is looked at from this long before (s). */
    private static final double BEFORE_S = 1e-3;

    private static final double SAME_TIME_S = 1e-9;

    private final CalmWatch calm;
    private final EngineState engine;
    private final Ripples ripples;
    private final FollowedCutoff[] cutoffs;
    private final Piece piece = new Piece();
    private final OperatingPoint first;
    private final OperatingPoint last;
    private LongStep step;
    private double untilS;
    /** Since when the cutoffs have not been told of their readings (s). */
    private double toldS;
    /** When the first of their delays is over, if their readings stay where they are (s). */
    private double delayedS;

    FilteredStretch(Actions actions, CalmWatch calm, EngineState engine, Bounds bounds, Ripples ripples, int circuits) {
        this.calm = calm;
        this.engine = engine;
        this.ripples = ripples;
        cutoffs = IntStream.range(0, actions.cutoffs().size())
                .filter(i -> actions.cutoffs().get(i).isFiltered())
                .mapToObj(i -> new FollowedCutoff(actions.cutoffs().get(i), actions.tap(i), bounds.filter(i)))
                .toArray(FollowedCutoff[]::new);
        first = new OperatingPoint(circuits);
        last = new OperatingPoint(circuits);
    }

    /** Begins a step at a time (s). */
    void begin(LongStep next, double atS) {
        step = next;
        untilS = atS;
        if (next.pattern().isSteady() || cutoffs.length == 0) {
            return;
        }
        for (FollowedCutoff cutoff : cutoffs) {
            if (!cutoff.reads()) {
                return;
            }
            cutoff.begin(next, ripples);
        }
        untilS = atS + calm.calmBesideFiltersForS(atS) - BEFORE_S;
    }

    /** Follows from a time to where something might act, or to an end; the time reached (s). */
    double follow(double fromS, double endS) {
        if (fromS >= untilS) {
            return fromS;
        }
        FlashPattern pattern = step.pattern();
        double atS = fromS;
        turnTo(atS);
        piece.toShare = share(atS);
        while (endS - atS > SAME_TIME_S) {
            double toS = Math.min(pattern.endS(), endS);
            piece.segment = pattern.segment();
            piece.combination = pattern.combination();
            piece.lengthS = toS - atS;
            piece.fromShare = piece.toShare;
            piece.toShare = share(toS);
            piece.isWhole = atS > fromS && toS < endS;
            if (toS > untilS || !take(atS, toS)) {
                break;
            }
            ripples.advance(piece.combination, piece.lengthS);
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

    /** Takes the segment in hand; false: a cutoff acts in it. */
    private boolean take(double atS, double toS) {
        boolean plain = toS <= delayedS;
        for (FollowedCutoff cutoff : cutoffs) {
            plain &= cutoff.staysPlain(piece);
        }
        if (!plain) {
            return show(atS, toS);
        }
        for (FollowedCutoff cutoff : cutoffs) {
            cutoff.pass();
        }
        return true;
    }

    /** Shows the cutoffs the segment in hand; false: one acts in it. */
    private boolean show(double atS, double toS) {
        tell(atS);
        boolean runs = engine.runs();
        for (FollowedCutoff cutoff : cutoffs) {
            if (cutoff.acts(piece.lengthS, runs)) {
                return false;
            }
        }
        for (FollowedCutoff cutoff : cutoffs) {
            cutoff.advance(runs);
        }
        turnTo(toS);
        return true;
    }

    /** Tells the cutoffs of their readings since they were last told, all of them on the side of the present one. */
    private void tell(double atS) {
        if (atS > toldS) {
            for (FollowedCutoff cutoff : cutoffs) {
                cutoff.tell(atS - toldS, engine.runs());
            }
        }
        toldS = atS;
    }

    /** Takes up the cutoffs' readings as they are at a time. */
    private void turnTo(double atS) {
        toldS = atS;
        delayedS = Double.POSITIVE_INFINITY;
        for (FollowedCutoff cutoff : cutoffs) {
            delayedS = Math.min(delayedS, atS + cutoff.turn(engine.runs()) - BEFORE_S);
        }
    }

    private double share(double timeS) {
        return (timeS - step.startS()) / step.lengthS();
    }
}
