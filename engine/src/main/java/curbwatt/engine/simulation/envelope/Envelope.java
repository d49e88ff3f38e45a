package curbwatt.engine.simulation.envelope;

import curbwatt.engine.simulation.book.RunBook;
import curbwatt.engine.simulation.device.Actions;
import curbwatt.engine.simulation.device.CalmWatch;
import curbwatt.engine.simulation.device.EngineWatch;
import curbwatt.engine.simulation.network.Network;
import curbwatt.engine.simulation.part.Batteries;
import curbwatt.engine.simulation.part.EngineState;
import curbwatt.engine.simulation.part.LoadBank;
import curbwatt.engine.simulation.part.OperatingPoint;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * Decides when a long step may be taken, and of which reach.
 *
 * <p>Nothing but the flashes of a {@link FlashPattern} may switch in it. After anything else has, edges are followed one by one
 * until all inrush is over; before anything might, likewise. A step over a radio's calls is tried first, then one between them.
 */
public final class Envelope {

    /** Longest time before a step is tried again, after it could not be done (s). */
    private static final double LONGEST_WAIT_S = 2;
    /** The same for one over slow clocks, after it could not be done although there was room for it (s). */
    private static final double LONGEST_FAR_WAIT_S = 120;

    private static final double SHORTEST_WAIT_S = 0.005;

    /** A switching at the end belongs to the next step: what the end shows is what held this long before (s). */
    static final double BEFORE_EDGE_S = 2e-6;

    private final LoadBank bank;
    private final Batteries batteries;
    private final Stride near;
    private final Supplier<Stride> farther;
    private final LongStepEntry entry;
    private final RunAhead runAhead = new RunAhead();
    /** The stride over slow clocks; null as long as there have been none. */
    private Stride far;

    private Stride taken;
    private long seenChanges = -1;
    private double notBeforeS;
    private double waitS = SHORTEST_WAIT_S;
    private double farNotBeforeS;
    private double farWaitS;

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
        this.batteries = batteries;
        int circuits = bank.circuits.size();
        Function<Reach, Stride> strides = reach -> {
            LongStep step = new LongStep(network, engine, batteries, circuits, toleranceV);
            DevicePass pass = new DevicePass(reach, step, actions, watch, calm, engine, bank.circuits);
            return new Stride(reach, bank, engine, calm, step, pass);
        };
        near = strides.apply(Reach.near());
        farther = () -> strides.apply(Reach.far());
        taken = near;
        entry = new LongStepEntry(batteries, engine, circuits);
    }

    /** Something has happened that the loads do not know of: what is being followed begins anew. */
    public void interrupt() {
        near.interrupt();
        if (far != null) {
            far.interrupt();
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
            near.forget();
            if (far != null) {
                far.forget();
            }
            notBeforeS = bank.changedS() + bank.longestSurgeS();
            farNotBeforeS = notBeforeS;
            farWaitS = 0;
        }
        if (timeS < notBeforeS) {
            return 0;
        }
        double lengthS = tryFar(timeS, endS, guess);
        return lengthS > 0 ? lengthS : tryNear(timeS, endS, guess);
    }

    private double tryNear(double timeS, double endS, OperatingPoint guess) {
        taken = near;
        double lengthS = near.tryFrom(timeS, endS, guess);
        notBeforeS = near.resumesS();
        if (lengthS == 0 && notBeforeS == timeS) {
            waitS = Math.min(LONGEST_WAIT_S, 2 * waitS);
            notBeforeS = timeS + waitS;
        } else if (lengthS > 0) {
            waitS = near.shortestS();
        }
        return lengthS;
    }

    private double tryFar(double timeS, double endS, OperatingPoint guess) {
        if (timeS < farNotBeforeS || !reachesFurther(timeS)) {
            return 0;
        }
        taken = far;
        double lengthS = far.tryFrom(timeS, endS, guess);
        if (lengthS > 0) {
            notBeforeS = far.resumesS();
            farWaitS = 0;
        } else if (far.resumesS() > timeS) {
            farNotBeforeS = far.resumesS();
        } else {
            farWaitS = Math.min(LONGEST_FAR_WAIT_S, Math.max(far.shortestS(), 2 * farWaitS));
            farNotBeforeS = timeS + farWaitS;
        }
        return lengthS;
    }

    /** Whether there are clocks that only the far stride averages over. */
    private boolean reachesFurther(double timeS) {
        near.look(timeS);
        if (near.edgedLoads() == 0) {
            return false;
        }
        if (far == null) {
            far = farther.get();
        }
        far.look(timeS);
        return far.edgedLoads() < near.edgedLoads();
    }

    /** Adds the step found to the books. */
    public void addTo(RunBook book) {
        entry.add(step(), book);
    }

    /**
     * Moves the batteries to the end of the step found.
     *
     * @param end filled with what holds there
     */
    public void take(OperatingPoint end) {
        LongStep step = step();
        step.at(step.startS() + step.lengthS() - BEFORE_EDGE_S, end);
        batteries.takeFrom(step.states().end);
        runAhead.correct(batteries, step);
    }

    LongStep step() {
        return taken.step();
    }
}
