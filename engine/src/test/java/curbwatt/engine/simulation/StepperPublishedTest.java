package curbwatt.engine.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.Terminal;
import curbwatt.engine.check.Published;
import curbwatt.engine.check.Published.Obtained;
import curbwatt.engine.control.RecloseRule;
import curbwatt.engine.event.Event;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.result.TraceRow;
import curbwatt.engine.simulation.record.Recorder;
import curbwatt.engine.simulation.record.TraceRecorder;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.vehicle.Vehicle;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.events.EventHandler;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;

/**
 * Our stepper against the eighth-order Dormand–Prince integrator of Commons Math on the same equations, with the node
 * solved by Brent's method in the voltage instead of ours in the current.
 */
class StepperPublishedTest {

    private static final String SOURCE = "Commons Math 3.6.1, DormandPrince853Integrator with event location";
    private static final double FEED_OHM = 0.02;
    private static final double POWER_W = 12.8 * 9;
    private static final double CONDUCTANCE_S = 4 / 12.8;
    private static final double CONSTANT_A = 3;

    private final Battery battery = Vehicles.flooded70();
    private final Terminal terminal = battery.at(25);

    /**
     * Current of the test vehicle at a node voltage: power behind a feed, a heater and a constant current on the node.
     */
    private static double loadsA(double nodeV) {
        double farV = 0.5 * (nodeV + Math.sqrt(nodeV * nodeV - 4 * FEED_OHM * POWER_W));
        return POWER_W / farV + CONDUCTANCE_S * nodeV + CONSTANT_A;
    }

    private final class Equations implements FirstOrderDifferentialEquations {
        private final DoubleUnaryOperator sourceA;
        private final double filterS;

        Equations(DoubleUnaryOperator sourceA, double filterS) {
            this.sourceA = sourceA;
            this.filterS = filterS;
        }

        @Override
        public int getDimension() {
            return 2 + battery.modes().size();
        }

        double mainA(double[] y) {
            double bound = bound(y);
            return new BrentSolver(1e-12, 1e-12)
                    .solve(500, main -> main + sourceA.applyAsDouble(0) - loadsA(v(y, bound, main)), 0, 200);
        }

        double nodeV(double[] y) {
            return v(y, bound(y), mainA(y));
        }

        private double v(double[] y, double bound, double mainA) {
            return terminal.voltageV(y[0], bound, mainA);
        }

        private double bound(double[] y) {
            double sum = 0;
            for (int m = 0; m < battery.modes().size(); m++) {
                sum += y[1 + m];
            }
            return sum;
        }

        @Override
        public void computeDerivatives(double t, double[] y, double[] yDot) {
            double mainA = mainA(y);
            yDot[0] = mainA / 3600;
            for (int m = 0; m < battery.modes().size(); m++) {
                yDot[1 + m] = (battery.modes().weight(m) * mainA
                                - y[1 + m] / battery.modes().timeConstantH(m))
                        / 3600;
            }
            int last = y.length - 1;
            yDot[last] = (v(y, bound(y), mainA) - y[last]) / filterS;
        }
    }

    private static Vehicle vehicle(Battery battery, double tripV, double delayS, double filterS) {
        return Vehicles.vehicle(
                battery,
                List.of(
                        new Circuit("far", FEED_OHM, List.of(Vehicles.steady("radio", 9, -1))),
                        new Circuit(
                                "near",
                                0,
                                List.of(Vehicles.steady("heater", 4, 1), Vehicles.steady("lamp", CONSTANT_A, 0)))),
                Vehicles.cutoff(tripV, delayS, filterS, new RecloseRule.ByHand(), "far", "near"));
    }

    @Test
    void dischargeAndFilteredTrip(TestReporter reporter) {
        double tripV = 11.7;
        double delayS = 45;
        double filterS = 20;
        Equations equations = new Equations(t -> 0, filterS);
        DormandPrince853Integrator integrator = new DormandPrince853Integrator(1e-6, 300, 1e-12, 1e-12);
        double[] y = new double[equations.getDimension()];
        y[y.length - 1] = equations.nodeV(y);
        integrator.addEventHandler(new StopsBelow(tripV), 60, 1e-9, 200);
        double crossedS = integrator.integrate(equations, 0, y.clone(), 7 * 3600, y);

        TraceRecorder trace = new TraceRecorder(600, List.of("far", "near"));
        RunResult run = Simulation.of(
                        vehicle(battery, tripV, delayS, filterS), Vehicles.scene(1, 25, Vehicles.off(7 * 3600, 25)))
                .run(trace);
        Event trip = run.events().stream()
                .filter(event -> event.kind() == EventKind.CUTOFF_TRIPPED)
                .findFirst()
                .orElseThrow();
        row("trip at 11.7 V, 45 s, filter 20 s, 17 A of mixed loads", "s", crossedS + delayS, 0.1)
                .check(trip.timeS(), reporter);
        double[] atHour = new double[equations.getDimension()];
        atHour[atHour.length - 1] = 12;
        new DormandPrince853Integrator(1e-6, 300, 1e-12, 1e-12).integrate(equations, 0, atHour.clone(), 3600, atHour);
        TraceRow hour = trace.trace().rows().get(6);
        assertThat(hour.timeS()).isEqualTo(3600);
        row("the same, node voltage after 1 h", "V", equations.nodeV(atHour), 2e-5)
                .check(hour.nodeV(), reporter);
        row("the same, state of charge after 1 h", "1", 1 - atHour[0] / battery.capacityAh(), 1e-6)
                .check(hour.stateOfChargeFraction(), reporter);
    }

    @Test
    void flashing(TestReporter reporter) {
        Equations lit = new Equations(t -> -15, 1);
        Equations dark = new Equations(t -> 0, 1);
        double[] y = new double[lit.getDimension()];
        y[y.length - 1] = 12;
        double cycleS = 0.7;
        double onS = 0.3;
        int cycles = 600;
        for (int i = 0; i < cycles; i++) {
            DormandPrince853Integrator integrator = new DormandPrince853Integrator(1e-6, 1, 1e-11, 1e-11);
            integrator.integrate(lit, i * cycleS, y, i * cycleS + onS, y);
            integrator.integrate(dark, i * cycleS + onS, y, (i + 1) * cycleS, y);
        }
        Circuit near = new Circuit(
                "near",
                0,
                List.of(
                        Vehicles.steady("heater", 4, 1),
                        Vehicles.steady("lamp", CONSTANT_A, 0),
                        Vehicles.flashing("head", 15, 0, 1000 * cycleS, 1000 * onS, 0)));
        Circuit far = new Circuit("far", FEED_OHM, List.of(Vehicles.steady("radio", 9, -1)));
        Simulation flashes = Simulation.of(
                Vehicles.vehicle(battery, List.of(far, near)),
                Vehicles.scene(1, 25, Vehicles.off(cycles * cycleS, 25)));
        RunResult everyEdge = flashes.run(Recorder.none(), StepControl.usual(), Fidelity.RESOLVED);
        row("charge drawn in 600 flashes of 15 A, 0.3 of 0.7 s, over 17 A of mixed loads", "Ah", y[0], 1e-7)
                .check(everyEdge.charge().removedAh(), reporter);
        row("the same in long steps", "Ah", y[0], 1e-6)
                .check(flashes.run(Recorder.none()).charge().removedAh(), reporter);
    }

    private static Published row(String what, String unit, double value, double tolerance) {
        return new Published("Stepper", what, unit, value, tolerance, Obtained.DERIVED, SOURCE);
    }

    /** Stops the integration when the filtered voltage falls through a level. */
    private static final class StopsBelow implements EventHandler {
        private final double levelV;

        StopsBelow(double levelV) {
            this.levelV = levelV;
        }

        @Override
        public void init(double t0, double[] y0, double t) {}

        @Override
        public double g(double t, double[] y) {
            return y[y.length - 1] - levelV;
        }

        @Override
        public Action eventOccurred(double t, double[] y, boolean increasing) {
            return increasing ? Action.CONTINUE : Action.STOP;
        }

        @Override
        public void resetState(double t, double[] y) {}
    }
}
