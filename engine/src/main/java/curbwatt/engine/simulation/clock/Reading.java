package curbwatt.engine.simulation.clock;

/**
 * A voltage through one step, after a first-order filter: the input runs straight from start to end, the output follows
 * exactly.
 *
 * <pre>
 *   u(t) = u0 + r t,   τ dF/dt = u − F,   F(t) = u(t) − rτ + (F0 − u0 + rτ) e^(−t/τ)
 * </pre>
 *
 * <p>F has at most one extremum in a step, so a step is at most two monotone pieces.
 */
public final class Reading {

    /** Times nearer than this are one (s). */
    private static final double SAME_S = 1e-9;

    private final double timeConstantS;
    private double inputV;
    private double inputSlopeVPerS;
    private double transientV;
    private double lengthS;
    private double turnS;
    private double inputEndV;
    private double outputStartV;
    /** e^(−t/τ) where the output turns. */
    private double turnDecay;
    /** e^(−t/τ) at the step's end; not a number until it is asked for. All timers ask, again and again. */
    private double endDecay = Double.NaN;
    /** The crossing last found, and the level crossed: who asks when a delay is over asks again when the step is taken. */
    private double crossedS;

    private double crossedV = Double.NaN;

    public Reading(double timeConstantS) {
        this.timeConstantS = timeConstantS;
    }

    /** Sets the step: its length, the input at both ends and the output at its start. */
    public void set(double lengthS, double inputStartV, double inputEndV, double outputStartV) {
        boolean sameLength = lengthS == this.lengthS;
        if (sameLength && inputStartV == inputV && inputEndV == this.inputEndV && outputStartV == this.outputStartV) {
            return;
        }
        if (!sameLength) {
            this.lengthS = lengthS;
            endDecay = Double.NaN;
        }
        crossedV = Double.NaN;
        inputV = inputStartV;
        this.inputEndV = inputEndV;
        this.outputStartV = outputStartV;
        inputSlopeVPerS = lengthS > 0 ? (inputEndV - inputStartV) / lengthS : 0;
        double lagV = inputSlopeVPerS * timeConstantS;
        transientV = timeConstantS > 0 ? outputStartV - inputStartV + lagV : 0;
        // dF/dt = r − (transient/τ) e^(−t/τ) = 0
        double ratio = transientV / lagV;
        turnS = ratio > 1 ? timeConstantS * Math.log(ratio) : Double.POSITIVE_INFINITY;
        turnDecay = 1 / ratio;
    }

    public double lengthS() {
        return lengthS;
    }

    /** End of the first monotone piece (s), not past the step's end. */
    public double turnS() {
        return Math.min(turnS, lengthS);
    }

    /** Output at a time in the step (V). */
    public double at(double timeS) {
        double straightV = inputV + inputSlopeVPerS * timeS;
        return timeConstantS == 0 ? straightV : straightV - inputSlopeVPerS * timeConstantS + transientV * decay(timeS);
    }

    private double decay(double timeS) {
        if (timeS == 0) {
            return 1;
        }
        if (timeS == turnS) {
            return turnDecay;
        }
        if (timeS != lengthS) {
            return Math.exp(-timeS / timeConstantS);
        }
        if (Double.isNaN(endDecay)) {
            endDecay = Math.exp(-lengthS / timeConstantS);
        }
        return endDecay;
    }

    /** Time in a monotone piece, given by its ends, at which the output crosses a level, given that it does (s). */
    public double crossingS(double fromS, double toS, double levelV) {
        if (levelV != crossedV || crossedS < fromS || crossedS > toS) {
            crossedS = crossing(fromS, toS, levelV);
            crossedV = levelV;
        }
        return crossedS;
    }

    private double crossing(double fromS, double toS, double levelV) {
        double insideS = fromS;
        double outsideS = toS;
        double fromV = at(fromS) - levelV;
        double toV = at(toS) - levelV;
        if (timeConstantS == 0) {
            return fromS + (toS - fromS) * (fromV / (fromV - toV));
        }
        double timeS = fromS + (toS - fromS) * (fromV / (fromV - toV));
        while (outsideS - insideS > SAME_S) {
            double overV = at(timeS) - levelV;
            if (overV * fromV > 0) {
                insideS = timeS;
            } else {
                outsideS = timeS;
            }
            double slopeVPerS = inputSlopeVPerS - transientV / timeConstantS * decay(timeS);
            double nextS = timeS - overV / slopeVPerS;
            if (Math.abs(nextS - timeS) < 0.5 * SAME_S) {
                return timeS;
            }
            timeS = nextS > insideS && nextS < outsideS ? nextS : 0.5 * (insideS + outsideS);
        }
        return 0.5 * (insideS + outsideS);
    }
}
