package curbwatt.engine.simulation.part;

import curbwatt.engine.load.Load;
import java.util.ArrayList;
import java.util.List;

/**
 * What a circuit's loads draw together as a function of the voltage at the far end of its feed, and the feed's own
 * drop.
 *
 * <p>Loads of exponent 0, 1 and −1 are added up to one constant current, one conductance and one power, so that the
 * voltage behind the feed is the upper root of a quadratic; loads of other exponents take Newton's method from above.
 * Where
 * there is no root the feed can't deliver what constant-power loads ask for: {@link #solve} says so.
 */
public final class CircuitDraw {

    private static final int MOST_ITERATIONS = 80;
    /** Currents, conductances and powers nearer than this are one (A, S, W). */
    private static final double SAME = 1e-11;

    private final double feedOhm;
    private double constantA;
    private double conductanceS;
    private double powerW;
    private final List<Load> others = new ArrayList<>();
    private final List<Double> otherFactors = new ArrayList<>();

    private double farV;
    private double currentA;
    private double slopeAPerV;

    public CircuitDraw(double feedOhm) {
        this.feedOhm = feedOhm;
    }

    public void clear() {
        constantA = 0;
        conductanceS = 0;
        powerW = 0;
        others.clear();
        otherFactors.clear();
    }

    public void add(Load load) {
        add(load, 1);
    }

    /** Adds a load that draws a multiple of its rated current. */
    public void add(Load load, double factor) {
        double exponent = load.voltageExponent();
        if (exponent == 0) {
            constantA += factor * load.ratedCurrentA();
        } else if (exponent == 1) {
            conductanceS += factor * load.ratedCurrentA() / load.ratedVoltageV();
        } else if (exponent == -1) {
            powerW += factor * load.ratedCurrentA() * load.ratedVoltageV();
        } else {
            others.add(load);
            otherFactors.add(factor);
        }
    }

    void addConstant(double extraA) {
        constantA += extraA;
    }

    /** Whether it is the same as another but for what rounding leaves, in whichever order its loads were added. */
    public boolean isLike(CircuitDraw other) {
        return feedOhm == other.feedOhm
                && Math.abs(constantA - other.constantA) < SAME
                && Math.abs(conductanceS - other.conductanceS) < SAME
                && Math.abs(powerW - other.powerW) < SAME
                && others.equals(other.others)
                && otherFactors.equals(other.otherFactors);
    }

    /**
     * Solves for a node voltage (V); false: the feed can't carry what is asked, and the circuit counts as drawing
     * nothing.
     */
    public boolean solve(double nodeV) {
        if (feedOhm == 0) {
            farV = nodeV;
        } else if (others.isEmpty() && powerW == 0) {
            farV = (nodeV - feedOhm * constantA) / (1 + feedOhm * conductanceS);
            if (farV <= 0) {
                return fail(nodeV);
            }
        } else if (others.isEmpty()) {
            double reachV = nodeV - feedOhm * constantA;
            double widening = 1 + feedOhm * conductanceS;
            double discriminant = reachV * reachV - 4 * widening * feedOhm * powerW;
            if (reachV <= 0 || discriminant < 0) {
                return fail(nodeV);
            }
            farV = 0.5 * (reachV + Math.sqrt(discriminant)) / widening;
        } else if (!iterateFrom(nodeV)) {
            return fail(nodeV);
        }
        currentA = drawA(farV);
        double ownSlope = drawSlopeAPerV(farV);
        slopeAPerV = ownSlope / (1 + feedOhm * ownSlope);
        return true;
    }

    /**
     * Newton's method from the node's voltage down, kept between a voltage that lies above the root and one that lies
     * below it, so that a long first step (a lamp behind a long wire) is not taken for a collapse.
     */
    private boolean iterateFrom(double nodeV) {
        double aboveV = nodeV;
        double belowV = 0;
        double trialV = nodeV;
        for (int i = 0; i < MOST_ITERATIONS; i++) {
            double excessV = nodeV - trialV - feedOhm * drawA(trialV);
            double slope = -1 - feedOhm * drawSlopeAPerV(trialV);
            double changeV = -excessV / slope;
            if (slope < 0 && Math.abs(changeV) < 1e-13 * nodeV) {
                farV = trialV + changeV;
                return true;
            }
            if (excessV < 0 && slope < 0) {
                aboveV = trialV;
            } else {
                belowV = trialV;
            }
            double nextV = trialV + changeV;
            trialV = slope < 0 && nextV > belowV && nextV < aboveV ? nextV : 0.5 * (belowV + aboveV);
        }
        return false;
    }

    /** Moves the last solution to a node voltage a little further on (V), along its slope. */
    public void follow(double furtherV) {
        double furtherA = slopeAPerV * furtherV;
        currentA += furtherA;
        farV += furtherV - feedOhm * furtherA;
    }

    private boolean fail(double nodeV) {
        farV = nodeV;
        currentA = 0;
        slopeAPerV = 0;
        return false;
    }

    private double drawA(double voltageV) {
        double sumA = constantA + conductanceS * voltageV;
        if (powerW != 0) {
            sumA += powerW / voltageV;
        }
        for (int i = 0; i < others.size(); i++) {
            sumA += otherFactors.get(i) * others.get(i).currentA(voltageV);
        }
        return sumA;
    }

    private double drawSlopeAPerV(double voltageV) {
        double slope = conductanceS - powerW / (voltageV * voltageV);
        for (int i = 0; i < others.size(); i++) {
            slope += otherFactors.get(i)
                    * others.get(i).voltageExponent()
                    * others.get(i).currentA(voltageV)
                    / voltageV;
        }
        return slope;
    }

    /** Voltage at the far end of the feed in the last solution (V). */
    public double farV() {
        return farV;
    }

    /** Current in the last solution (A). */
    public double currentA() {
        return currentA;
    }

    /** Slope of the current over the node voltage in the last solution (A/V). */
    public double slopeAPerV() {
        return slopeAPerV;
    }

    /** Heat in the feed in the last solution (W). */
    public double feedLossW() {
        return feedOhm * currentA * currentA;
    }
}
