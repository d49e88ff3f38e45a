package curbwatt.engine.simulation.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.Chemistry;
import curbwatt.engine.battery.label.BatteryLabel;
import curbwatt.engine.battery.label.LabelFit;
import curbwatt.engine.load.LoadPattern;
import curbwatt.engine.load.Loads;
import curbwatt.engine.scene.InitialState;
import curbwatt.engine.simulation.part.BatteryWork;
import curbwatt.engine.simulation.part.CircuitDraw;
import curbwatt.engine.simulation.part.CircuitState;
import curbwatt.engine.simulation.part.NodePoint;
import curbwatt.engine.vehicle.BatteryInstallation;
import curbwatt.engine.vehicle.Circuit;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * What a regulated source gives is decided by its set-point and its limit, not by where the solver began to look. A battery that is
 * nearly full takes next to nothing at the set-point; beside loads of constant power the source could then stand at its limit too, far
 * below.
 */
class RegulatedSourceTest {

    private static final int NODES = 4000;
    private static final double SET_POINT_V = 14.2;
    private static final Battery AGM = Battery.asNew(
            LabelFit.of(BatteryLabel.of(Chemistry.AGM, 92, 160, 850)).parameters());

    private final Random random = new Random(1);
    private int atLimit;
    private int regulated;

    @Test
    void itHoldsItsSetPointUpToItsLimitFromWhereverTheSolverBegins() {
        for (int i = 0; i < NODES; i++) {
            CircuitState circuit = new CircuitState(new Circuit("lamps", 0.02, List.of()));
            NodeSolver solver = new NodeSolver(List.of(circuit));
            BatteryWork battery = new BatteryWork(
                    new BatteryInstallation("battery", AGM, 18000),
                    new InitialState(0.3 + 0.7 * random.nextDouble(), -20 + 60 * random.nextDouble()));
            double limitA = 5 + 95 * random.nextDouble();
            CircuitDraw draw = draw();
            circuit.suppose(draw);
            NodePoint afresh = new NodePoint();
            if (solver.solve(battery, limitA, SET_POINT_V, afresh) == NodeSolver.Outcome.SOLVED) {
                assertLawful(afresh, limitA);
                for (NodePoint guess : elsewhere(circuit, solver, battery, limitA)) {
                    circuit.suppose(draw);
                    assertThat(solver.solve(battery, limitA, SET_POINT_V, guess))
                            .isEqualTo(NodeSolver.Outcome.SOLVED);
                    assertLawful(guess, limitA);
                    assertThat(guess.nodeV).isCloseTo(afresh.nodeV, within(1e-10));
                    assertThat(guess.mainA).isCloseTo(afresh.mainA, within(1e-8));
                    assertThat(guess.sourceA).isCloseTo(afresh.sourceA, within(1e-8));
                }
            }
        }
        // both happen often, or the test would show nothing
        assertThat(atLimit).isGreaterThan(NODES / 10);
        assertThat(regulated).isGreaterThan(NODES / 10);
    }

    /** Solutions of the same node with other loads: heavier ones leave the source at its limit, lighter ones regulate. */
    private List<NodePoint> elsewhere(CircuitState circuit, NodeSolver solver, BatteryWork battery, double limitA) {
        return Stream.of(draw(), draw(), draw())
                .map(other -> {
                    circuit.suppose(other);
                    NodePoint point = new NodePoint();
                    solver.solve(battery, limitA, SET_POINT_V, point);
                    return point;
                })
                .toList();
    }

    private CircuitDraw draw() {
        CircuitDraw draw = new CircuitDraw(0.02);
        for (double exponent : new double[] {-1, 0, 1}) {
            draw.add(Loads.load("load", 0.1 + 40 * random.nextDouble(), exponent, new LoadPattern.Continuous()));
        }
        return draw;
    }

    private void assertLawful(NodePoint point, double limitA) {
        assertThat(point.residualA).isLessThan(1e-9);
        assertThat(point.sourceA).isBetween(0.0, limitA);
        if (point.sourceA == limitA) {
            atLimit++;
            assertThat(point.nodeV).isLessThanOrEqualTo(SET_POINT_V);
        } else if (point.sourceA > 0) {
            regulated++;
            assertThat(point.nodeV).isEqualTo(SET_POINT_V);
        } else {
            assertThat(point.nodeV).isGreaterThanOrEqualTo(SET_POINT_V);
        }
    }
}
