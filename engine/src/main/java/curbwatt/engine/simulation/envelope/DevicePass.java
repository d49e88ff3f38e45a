package curbwatt.engine.simulation.envelope;

import curbwatt.engine.simulation.device.Actions;
import curbwatt.engine.simulation.device.CalmWatch;
import curbwatt.engine.simulation.device.EngineWatch;
import curbwatt.engine.simulation.part.CircuitState;
import curbwatt.engine.simulation.part.EngineState;
import curbwatt.engine.simulation.part.OperatingPoint;
import java.util.List;

/**
 * Takes a long step past the devices, as far as none of them acts.
 *
 * <p>In one of three ways, the cheapest that holds: as a calm time, if their levels lie outside the waveform; as counts that come
 * to nothing, if flashes interrupt them in time; or by showing them the waveform, segment by segment.
 */
final class DevicePass {

    /** Turns of the slowest clock walked through before calm is looked for again; twice as many each time that there was none. */
    private static final double FEWEST_WALKED_TURNS = 16;
    /** Furthest swing of a battery's state with which devices are shown the waveform: a tenth of it may be wrong (V). */
    private static final double MOST_WALKED_SWING_V = 3e-4;
    /** Share of the usual tolerance that a voltage has where devices look at it. */
    private static final double FINE = 0.05;
    /** A delay that ends is left to the time loop from this long before (s). */
    private static final double BEFORE_S = 1e-3;
    /** Times this near are the same: the sum of a start and a length is rounded (s). */
    private static final double SAME_TIME_S = 1e-9;

    /** Share of the way to a level that is taken at once. */
    private static final double BEFORE_MEETING = 0.99;

    private final Reach reach;
    private final LongStep step;
    private final CalmWatch calm;
    private final Bounds bounds;
    private final Walk walk;
    private final Interruptions interruptions;
    private final FuseHeat fuses;
    private final OperatingPoint first;
    private final OperatingPoint last;
    private double walkedTurns = FEWEST_WALKED_TURNS;
    private double resumesS;

    DevicePass(
            Reach reach,
            LongStep step,
            Actions actions,
            EngineWatch watch,
            CalmWatch calm,
            EngineState engine,
            List<CircuitState> circuits) {
        this.reach = reach;
        this.step = step;
        this.calm = calm;
        bounds = new Bounds(actions, calm, circuits.size());
        walk = new Walk(actions, watch, calm, engine, bounds, circuits);
        interruptions = new Interruptions(calm);
        fuses = new FuseHeat(calm, circuits);
        first = new OperatingPoint(circuits.size());
        last = new OperatingPoint(circuits.size());
    }

    /** Looks at another pattern. */
    void begin(FlashPattern pattern) {
        bounds.begin(pattern);
    }

    /** From when on another long step may be looked for: before, a device acts that is left to the time loop (s). */
    double resumesS() {
        return resumesS;
    }

    /** Shows the devices a step, as far as none of them acts (s). */
    double shown(double timeS, double lengthS, double shortestS) {
        resumesS = timeS;
        bounds.look(step, 1);
        if (bounds.swingV() > reach.mostSwingV()) {
            return 0;
        }
        double calmS = calmForS(timeS);
        if (calmS == 0 && isInterrupted(timeS, lengthS)) {
            return mayWalk() || interruptions.endPlainly()
                    ? interrupted(timeS, lengthS, shortestS)
                    : untilInterrupted(timeS, shortestS);
        }
        double partS = lengthS;
        if (calmS == 0) {
            partS = calmPartS(timeS, lengthS, shortestS);
            calmS = partS < lengthS ? calmForS(timeS) : 0;
        }
        if (calmS - BEFORE_S > shortestS) {
            partS = Math.min(partS, calmS - BEFORE_S);
            if (partS < lengthS) {
                shorten(partS);
            }
            if (partS == calmS - BEFORE_S) {
                resumesS = timeS + calmS + shortestS;
            }
            // a step anew solved has other bounds, if only by microvolts
            if (calmForS(timeS) >= partS) {
                walkedTurns = FEWEST_WALKED_TURNS;
                return calm(timeS, partS);
            }
            return mayWalk() && calm.mayWalk() ? walked(timeS, partS, shortestS) : 0;
        }
        if (!mayWalk()) {
            return 0;
        }
        bounds.look(step, 1);
        return walked(timeS, lengthS, shortestS);
    }

    /** Whether devices may be shown the waveform where it comes to a level: if the state's swing is known well enough. */
    private boolean mayWalk() {
        return reach.mayWalk() && bounds.swingV() <= MOST_WALKED_SWING_V;
    }

    /** Whether all that could happen in the step is that counts are interrupted. */
    private boolean isInterrupted(double timeS, double lengthS) {
        return !step.pattern().isSteady()
                && calm.mayWalk()
                && calm.calmIfInterruptedForS(timeS) >= lengthS + BEFORE_S
                && interruptions.come(step, bounds.marginV());
    }

    /** Shows the devices a step from the last interruption on: what they counted before it is forgotten (s). */
    private double interrupted(double timeS, double lengthS, double shortestS) {
        double fromS = interruptions.fromS();
        if (fromS > timeS) {
            // filters go on from what they read there
            double share = (fromS - timeS) / lengthS;
            bounds.look(step, share);
            bounds.readAt(step, 0, share);
            fuses.follow(step, share);
            step.at(timeS, first);
            step.at(fromS, last);
            calm.advanceInterrupted(timeS, fromS, first, last, interruptions.found());
        }
        return reached(walk.through(step, fromS) - timeS, timeS, lengthS, shortestS);
    }

    /** Cuts a step where all that devices counted in it has come to nothing, so that they need not be shown any of it (s). */
    private double untilInterrupted(double timeS, double shortestS) {
        double endS = interruptions.lastTogetherS();
        if (endS - timeS < shortestS) {
            return 0;
        }
        double share = (endS - timeS) / step.lengthS();
        bounds.look(step, share);
        bounds.readAt(step, 0, share);
        fuses.follow(step, share);
        step.shorten(endS - timeS);
        step.at(timeS, first);
        step.at(endS - Envelope.BEFORE_EDGE_S, last);
        calm.advanceInterrupted(timeS, endS, first, last, interruptions.found());
        return endS - timeS;
    }

    /** Looks for a shorter part of the step that is calm (s); the whole: none. */
    private double calmPartS(double timeS, double lengthS, double shortestS) {
        // a calm step hardly longer than a walk costs more than the walk
        double walkS = mayWalk() ? walkedTurns * step.pattern().slowestS() : 0;
        double least = 2 * Math.max(shortestS, walkS) / lengthS;
        double share = bounds.meets() < 1 ? BEFORE_MEETING * bounds.meets() : 1;
        boolean found = share < 1 && share > least && isCalmUntil(timeS, share);
        if (!found && 0.5 * share > least && isCalmAtStart(timeS)) {
            do {
                share *= 0.5;
                found = isCalmUntil(timeS, share);
            } while (!found && 0.5 * share > least);
        }
        if (found) {
            // a level is near: the next step will hardly be longer, unless it is walked through
            step.propose(Math.max(
                    share * lengthS, FEWEST_WALKED_TURNS * step.pattern().slowestS()));
        }
        return found ? share * lengthS : lengthS;
    }

    private boolean isCalmUntil(double timeS, double share) {
        bounds.look(step, share);
        return calmForS(timeS) > 0;
    }

    /** Whether a shorter step could be calm at all. */
    private boolean isCalmAtStart(double timeS) {
        bounds.look(step, 0);
        return calmForS(timeS) > 0;
    }

    private double calmForS(double timeS) {
        return calm.mayWalk() ? calm.calmForS(timeS) : 0;
    }

    private double calm(double timeS, double lengthS) {
        bounds.readAt(step, 0, 1);
        fuses.follow(step, 1);
        step.at(timeS, first);
        step.at(timeS + lengthS - Envelope.BEFORE_EDGE_S, last);
        calm.advance(timeS, timeS + lengthS, first, last);
        return lengthS;
    }

    /** Walks the devices through a step, to where one acts; not far where cycle follows cycle without repeating (s). */
    private double walked(double timeS, double lengthS, double shortestS) {
        double partS = lengthS;
        if (!step.pattern().isSteady() && !(step.pattern().repeats() && calm.mayRepeat(timeS))) {
            partS = Math.min(
                    lengthS, Math.max(shortestS, walkedTurns * step.pattern().slowestS()));
            walkedTurns *= 2;
            // the next step will be walked through too, or be calm not much longer
            step.propose(walkedTurns * step.pattern().slowestS());
        }
        // here a level is near: a tenth of a millivolt may be a second
        double fineS = step.refine(partS, FINE);
        if (fineS == 0) {
            return 0;
        }
        bounds.look(step, 1);
        return calm.mayWalk() ? reached(walk.through(step) - timeS, timeS, fineS, shortestS) : 0;
    }

    /** Cuts the step to where a device acts in it, if one does (s). */
    private double reached(double reachedS, double timeS, double lengthS, double shortestS) {
        if (reachedS > 0 && reachedS < lengthS - SAME_TIME_S) {
            shorten(reachedS);
            resumesS = timeS + reachedS + shortestS;
        }
        return reachedS;
    }

    private void shorten(double lengthS) {
        step.shorten(lengthS);
        bounds.look(step, 1);
    }
}
