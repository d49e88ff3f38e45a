package curbwatt.engine.simulation.part;

import curbwatt.engine.powertrain.UnderHood;
import curbwatt.engine.scene.Phase;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The air under the hood: as the phase says, where it says something; otherwise the air outside and the rise that the
 * running engine makes, which goes on from what the phase before left.
 */
final class HoodAir {

    /** A rise nearer to where it goes than this stands still (K). */
    private static final double SETTLED_K = 0.01;

    private final Optional<UnderHood> warming;
    private Phase phase;
    private double phaseStartS;
    private double anchorS;
    private double anchorRiseK;
    private boolean engineRuns;

    HoodAir(Optional<UnderHood> warming) {
        this.warming = warming;
    }

    /** What the vehicle says of it. */
    Optional<UnderHood> warming() {
        return warming;
    }

    /** Begins a phase. */
    void begin(Phase next, double startS, boolean running) {
        double riseK = phase == null ? 0 : riseK(startS);
        phase = next;
        phaseStartS = startS;
        anchor(startS, riseK, running);
    }

    /** Notes that the engine runs, or stands, from a time of this phase on. */
    void engine(double timeS, boolean running) {
        anchor(timeS, riseK(timeS), running);
    }

    private void anchor(double timeS, double riseK, boolean running) {
        anchorS = timeS;
        anchorRiseK = riseK;
        engineRuns = running;
    }

    /** Temperature at a time of this phase (°C); empty: nobody says. */
    OptionalDouble atC(double timeS) {
        if (phase.underHood().isPresent()) {
            return OptionalDouble.of(phase.underHood().get().atC(timeS - phaseStartS));
        }
        return warming.isPresent() ? OptionalDouble.of(outsideC(timeS) + riseK(timeS)) : OptionalDouble.empty();
    }

    private double outsideC(double timeS) {
        return phase.air().atC(timeS - phaseStartS);
    }

    private double riseK(double timeS) {
        if (phase.underHood().isPresent()) {
            return phase.underHood().get().atC(timeS - phaseStartS) - outsideC(timeS);
        }
        return warming.map(hood -> hood.nextRiseK(anchorRiseK, engineRuns, timeS - anchorS))
                .orElse(0.0);
    }

    /**
     * Longest step from a time over which it runs nearly as the step follows it (s).
     *
     * @param ofTimeConstant share of the rise's time constant that such a step may take
     */
    double plainForS(double timeS, double inPhaseS, double ofTimeConstant) {
        if (phase.underHood().isPresent()) {
            return phaseStartS + phase.underHood().get().nextPointS(inPhaseS) - timeS;
        }
        if (warming.isEmpty()) {
            return Double.POSITIVE_INFINITY;
        }
        UnderHood hood = warming.get();
        double goalK = engineRuns ? hood.settledRiseK() : 0;
        return Math.abs(riseK(timeS) - goalK) < SETTLED_K
                ? Double.POSITIVE_INFINITY
                : ofTimeConstant * (engineRuns ? hood.warmingS() : hood.coolingS());
    }
}
