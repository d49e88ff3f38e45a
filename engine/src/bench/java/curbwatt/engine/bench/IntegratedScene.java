package curbwatt.engine.bench;

import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.Terminal;
import java.util.List;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.events.EventHandler;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;

/**
 * The same scene in the hands of a general integrator: charge removed, bound charges, temperature and the cutoff's filtered
 * reading as one system of differential equations, each stretch between two flash edges integrated by itself, the trip level
 * located by the integrator's event detection.
 *
 * <p>It is given what helps it: loads added up beforehand, the node solved by Newton's method from the last solution, the
 * battery's constants at a temperature taken anew at 0.0001 K as ours are, one integrator for the whole run, and a first trial
 * step of the whole stretch.
 */
public final class IntegratedScene implements FirstOrderDifferentialEquations, EventHandler {

    private static final double SECONDS_PER_HOUR = 3600;
    private static final double GRAIN_K = 0.0001;
    private static final double LONGEST_STRETCH_S = 60;
    private static final double TOLERANCE = 1e-9;

    private final Battery battery = FlashingScene.battery();
    private final FlashEdges warning;
    private final FlashEdges.Draw cab;
    private final FlashEdges.Draw keyOff;
    private final double durationS;
    private final int modes = battery.modes().size();
    private Terminal terminal = battery.at(FlashingScene.BATTERY_C);
    private double selfDischargeA = battery.selfDischargeA(FlashingScene.BATTERY_C);
    private FlashEdges.Draw lit;
    private boolean tripped;
    private double mainA = 10;
    private double belowSinceS = Double.NaN;
    private long evaluations;

    IntegratedScene(FlashingScene scene) {
        warning = new FlashEdges(scene.flashing(), List.of());
        cab = FlashEdges.Draw.of(scene.steady());
        keyOff = new FlashEdges.Draw(FlashingScene.KEY_OFF_A, 0, 0);
        durationS = SECONDS_PER_HOUR * scene.durationH();
    }

    /**
     * What came of it.
     *
     * @param tripS when the cutoff opened (s); not a number: it did not
     * @param endChargeFraction state of charge at the end
     * @param evaluations how often the right-hand side was asked for
     */
    public record Outcome(double tripS, double endChargeFraction, long evaluations) {}

    /** Integrates the whole scene; once. */
    Outcome run() {
        DormandPrince853Integrator integrator =
                new DormandPrince853Integrator(1e-9, LONGEST_STRETCH_S, TOLERANCE, TOLERANCE);
        integrator.addEventHandler(this, LONGEST_STRETCH_S, 1e-6, 100);
        double[] y = new double[modes + 3];
        y[modes + 1] = FlashingScene.BATTERY_C;
        lit = warning.draw(0);
        y[modes + 2] = nodeV(y);
        double tripS = Double.NaN;
        double timeS = 0;
        long cycle = 0;
        int stretch = 0;
        while (timeS < durationS) {
            lit = warning.draw(stretch);
            boolean wholeStretch = true;
            double endS = Math.min(durationS, tripped ? timeS + LONGEST_STRETCH_S : warning.endS(cycle, stretch));
            if (!tripped && belowSinceS + FlashingScene.TRIP_DELAY_S < endS) {
                endS = belowSinceS + FlashingScene.TRIP_DELAY_S;
                wholeStretch = false;
            }
            integrator.setInitialStepSize(endS - timeS);
            integrator.integrate(this, timeS, y, endS, y);
            timeS = endS;
            if (!wholeStretch) {
                tripped = true;
                tripS = endS;
            }
            if (Math.abs(y[modes + 1] - terminal.temperatureC()) > GRAIN_K) {
                terminal = battery.at(y[modes + 1]);
                selfDischargeA = battery.selfDischargeA(y[modes + 1]);
            }
            stretch++;
            if (stretch == warning.stretches()) {
                stretch = 0;
                cycle++;
            }
        }
        return new Outcome(tripS, 1 - y[0] / battery.capacityAh(), evaluations);
    }

    @Override
    public int getDimension() {
        return modes + 3;
    }

    @Override
    public void computeDerivatives(double timeS, double[] y, double[] rates) {
        evaluations++;
        double nodeV = nodeV(y);
        rates[0] = (mainA + selfDischargeA) / SECONDS_PER_HOUR;
        for (int m = 0; m < modes; m++) {
            rates[1 + m] = (battery.modes().weight(m) * mainA
                            - y[1 + m] / battery.modes().timeConstantH(m))
                    / SECONDS_PER_HOUR;
        }
        rates[modes + 1] = (FlashingScene.AIR_C - y[modes + 1]) / FlashingScene.BATTERY_TIME_CONSTANT_S;
        rates[modes + 2] = (nodeV - y[modes + 2]) / FlashingScene.FILTER_S;
    }

    /** Solves the node, and leaves the battery's current behind. */
    private double nodeV(double[] y) {
        double boundAh = 0;
        for (int m = 0; m < modes; m++) {
            boundAh += y[1 + m];
        }
        double openV = terminal.openV(y[0], boundAh);
        double surface = terminal.surfaceState(y[0], boundAh);
        double nodeV;
        double changeA;
        do {
            nodeV = openV - terminal.dropV(surface, mainA);
            double loadsA = keyOff.currentA(nodeV);
            double loadSlope = 0;
            if (!tripped) {
                double farV = lit.farV(nodeV, FlashingScene.WARNING_FEED_OHM);
                double ownSlope = lit.slopeAPerV(farV);
                loadsA += lit.currentA(farV) + cab.currentA(nodeV);
                loadSlope = ownSlope / (1 + FlashingScene.WARNING_FEED_OHM * ownSlope) + cab.slopeAPerV(nodeV);
            }
            changeA = (loadsA - mainA) / (1 - loadSlope * terminal.slopeVPerA(surface, mainA));
            mainA += changeA;
        } while (Math.abs(changeA) > 1e-9);
        return nodeV;
    }

    @Override
    public void init(double startS, double[] y, double endS) {}

    @Override
    public double g(double timeS, double[] y) {
        return y[modes + 2] - FlashingScene.TRIP_V;
    }

    @Override
    public Action eventOccurred(double timeS, double[] y, boolean increasing) {
        belowSinceS = increasing ? Double.NaN : timeS;
        return Action.CONTINUE;
    }

    @Override
    public void resetState(double timeS, double[] y) {}
}
