package curbwatt.engine.simulation.envelope;

import curbwatt.engine.simulation.device.Actions;
import curbwatt.engine.simulation.device.CalmWatch;
import curbwatt.engine.simulation.device.ComparedLevels;
import curbwatt.engine.simulation.device.EngineWatch;
import curbwatt.engine.simulation.network.SenseTap;
import curbwatt.engine.simulation.part.CircuitState;
import curbwatt.engine.simulation.part.EngineState;
import curbwatt.engine.simulation.part.OperatingPoint;
import curbwatt.engine.simulation.part.Parabola;
import java.util.List;

/**
 * Shows the devices the exact waveform of a long step, segment by segment, up to where one of them would act.
 *
 * <p>The voltages are those of the step's parabolas: nothing is solved. Between two instants at which a combination's voltage
 * passes a level all cycles look alike to a device without a filter; after one of them the others are taken as repeated.
 */
final class Walk {

    /** Pieces in which a step without flashes is shown. */
    private static final int PIECES = 16;

    private final Actions actions;
    private final EngineWatch watch;
    private final CalmWatch calm;
    private final EngineState engine;
    private final Bounds bounds;
    private final OperatingPoint from;
    private final OperatingPoint to;
    private final Ripples ripples;
    private final FilteredStretch filtered;
    private LongStep step;
    private FlashPattern pattern;
    private double atS;

    Walk(
            Actions actions,
            EngineWatch watch,
            CalmWatch calm,
            EngineState engine,
            Bounds bounds,
            List<CircuitState> circuits) {
        this.actions = actions;
        this.watch = watch;
        this.calm = calm;
        this.engine = engine;
        this.bounds = bounds;
        from = new OperatingPoint(circuits.size());
        to = new OperatingPoint(circuits.size());
        ripples = new Ripples(circuits);
        filtered = new FilteredStretch(actions, calm, engine, bounds, ripples, circuits.size());
    }

    /** Goes through a step as far as nothing acts; the time reached (s). */
    double through(LongStep next) {
        return through(next, next.startS());
    }

    /** As {@link #through(LongStep)}, from a time within the step (s). */
    double through(LongStep next, double fromS) {
        step = next;
        pattern = next.pattern();
        atS = fromS;
        double endS = next.startS() + next.lengthS();
        double pieceS = pattern.isSteady() ? next.lengthS() / PIECES : Double.POSITIVE_INFINITY;
        boolean mayRepeat = !pattern.isSteady() && pattern.repeats() && calm.mayRepeat(atS);
        double cycleFromS = atS;
        ripples.begin(step, atS);
        filtered.begin(step, atS);
        pattern.seek(atS);
        while (endS - atS > 1e-6) {
            if (mayRepeat && atS - cycleFromS > pattern.cycleS() - 1e-6) {
                cycleFromS = atS + repeat(cycleFromS, endS);
                if (cycleFromS > atS) {
                    atS = cycleFromS;
                    pattern.seek(atS);
                    continue;
                }
                cycleFromS = atS;
            }
            double followedS = pattern.isSteady() ? atS : filtered.follow(atS, endS);
            if (followedS > atS) {
                atS = followedS;
                continue;
            }
            double toS = Math.min(endS, Math.min(pattern.endS(), atS + pieceS));
            if (!show(toS)) {
                return atS;
            }
            atS = toS;
            if (atS < endS && !pattern.isSteady()) {
                pattern.next();
            }
        }
        return endS;
    }

    /** Shows the stretch to a time; false: a device would act in it. */
    private boolean show(double toS) {
        int combination = pattern.combination();
        double lengthS = toS - atS;
        step.sensedAt(combination, share(atS), from);
        ripples.lift(from, combination);
        ripples.advance(combination, lengthS);
        step.sensedAt(combination, share(toS), to);
        ripples.lift(to, combination);
        if (actions.firstS(lengthS, from, to, engine.runs()) <= lengthS
                || watch.firstS(atS, lengthS, from, to, engine) <= lengthS) {
            return false;
        }
        actions.advance(lengthS, from, to, engine.runs());
        watch.advance(atS, toS, from, to, engine);
        return true;
    }

    private double share(double timeS) {
        return (timeS - step.startS()) / step.lengthS();
    }

    /** Repeats the cycle just shown as often as it may be (s). */
    private double repeat(double cycleFromS, double endS) {
        double cycleS = pattern.cycleS();
        double alikeS = step.startS() + step.lengthS() * crossing(share(cycleFromS));
        double roomS = Math.min(Math.min(endS, alikeS) - atS, calm.repeatsForS(atS, cycleS));
        double repeatedS = cycleS * (Math.floor(roomS / cycleS) - 1);
        if (!(repeatedS >= cycleS)) {
            return 0;
        }
        for (int s = 0; s < pattern.segments(); s++) {
            ripples.advance(pattern.combination(s), pattern.lengthS(s) * repeatedS / cycleS);
        }
        bounds.readAt(step, share(atS), share(atS + repeatedS));
        calm.repeat(cycleS, repeatedS);
        return repeatedS;
    }

    /** Share of the step, after one, at which a combination's voltage first comes to a level. */
    private double crossing(double after) {
        double first = 1;
        // the state swings about its mean path, and its mean is known to a swing: a voltage this near may be on both
        // sides
        double swingV = 2 * bounds.swingV();
        ComparedLevels levels = calm.levels();
        int number = levels.lookUp();
        for (int l = 0; l < number; l++) {
            SenseTap tap = levels.tap(l);
            double levelV = levels.levelV(l);
            for (int k = 0; k < pattern.size(); k++) {
                double startV = tap.voltageV(step.start().points[k]) - levelV;
                double middleV = tap.voltageV(step.middle().points[k]) - levelV;
                double endV = tap.voltageV(step.end().points[k]) - levelV;
                double presentV = startV
                        + after * (-3 * startV + 4 * middleV - endV)
                        + after * after * (2 * startV - 4 * middleV + 2 * endV);
                if (Math.abs(presentV) <= swingV) {
                    return after;
                }
                first = Math.min(first, Parabola.zero(startV - swingV, middleV - swingV, endV - swingV, after));
                first = Math.min(first, Parabola.zero(startV + swingV, middleV + swingV, endV + swingV, after));
            }
        }
        return first;
    }
}
