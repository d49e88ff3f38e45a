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
    /** e^(−t/τ) at the step's end; not a number until it is asked for. All timers ask, again and again. */
    private double endDecay = Double.NaN;

    public Reading(double timeConstantS) {
        this.timeConstantS = timeConstantS;
    }

    /** Sets the step: its length, the input at both ends and the output at its start. */
    public void set(double lengthS, double inputStartV, double inputEndV, double outputStartV) {
        if (lengthS != this.lengthS) {
            this.lengthS = lengthS;
            endDecay = Double.NaN;
        }
        inputV = inputStartV;
        inputSlopeVPerS = lengthS > 0 ? (inputEndV - inputStartV) / lengthS : 0;
        double lagV = inputSlopeVPerS * timeConstantS;
        transientV = timeConstantS > 0 ? outputStartV - inputStartV + lagV : 0;
        // dF/dt = r − (transient/τ) e^(−t/τ) = 0
        double ratio = transientV / lagV;
        turnS = ratio > 1 ? timeConstantS * Math.log(ratio) : Double.POSITIVE_INFINITY;
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
        if (timeS != lengthS) {
            return Math.exp(-timeS / timeConstantS);
        }
        if (Double.isNaN(endDecay)) {
            endDecay = Math.exp(-lengthS / timeConstantS);
        }
        return endDecay;
    }

    /** Time between two at which the output crosses a level, given that it does (s). */
    public double crossingS(double fromS, double toS, double levelV) {
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
