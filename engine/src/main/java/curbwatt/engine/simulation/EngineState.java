package curbwatt.engine.simulation;

import curbwatt.engine.alternator.Alternator;
import curbwatt.engine.scene.Phase;
import java.util.Optional;

/** Whether the engine runs, how fast, and what its alternator could deliver. */
final class EngineState {

    /** A ramp is followed in steps of this share of its length. */
    private static final double RAMP_STEP_FRACTION = 0.05;
    /** A corner nearer than this is taken as passed: the clock's rounding may hide it for ever (s). */
    private static final double ONE_INSTANT_S = 1e-6;

    private final Optional<Alternator> alternator;
    private boolean runs;
    private double rampFromS = Double.NEGATIVE_INFINITY;
    private Phase phase;
    private double phaseStartS;

    EngineState(Optional<Alternator> alternator) {
        this.alternator = alternator;
    }

    boolean runs() {
        return runs;
    }

    /** Begins a phase in which the engine is off, or runs on. */
    void begin(Phase next, double startS, boolean running) {
        phase = next;
        phaseStartS = startS;
        runs = running;
    }

    /** Notes that the engine was started just now: the alternator's output ramps up from here. */
    void started(double timeS) {
        rampFromS = timeS;
    }

    /** Largest alternator current at a time of this phase (A). */
    double alternatorMaxA(double timeS) {
        if (!runs || alternator.isEmpty()) {
            return 0;
        }
        Alternator machine = alternator.get();
        double fullA = machine.maximumA(phase.speed().atRpm(timeS - phaseStartS));
        double sinceS = timeS - rampFromS;
        return sinceS < machine.rampS() ? fullA * sinceS / machine.rampS() : fullA;
    }

    /** Voltage that the regulator holds in this phase (V). */
    double setPointV() {
        return alternator
                .map(machine -> machine.regulator().setPointV(phase.airC()))
                .orElse(0.0);
    }

    /** Longest step from a time over which the alternator's ability runs nearly straight (s). */
    double straightForS(double timeS) {
        if (!runs || alternator.isEmpty()) {
            return Double.POSITIVE_INFINITY;
        }
        double rampS = alternator.get().rampS();
        double rampStepS = timeS - rampFromS < rampS - ONE_INSTANT_S
                ? Math.min(rampS * RAMP_STEP_FRACTION, rampFromS + rampS - timeS)
                : Double.POSITIVE_INFINITY;
        return Math.min(rampStepS, phaseStartS + phase.speed().nextPointS(timeS - phaseStartS + ONE_INSTANT_S) - timeS);
    }
}
