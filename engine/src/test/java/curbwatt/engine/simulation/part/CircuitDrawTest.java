package curbwatt.engine.simulation.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.load.Load;
import curbwatt.engine.load.LoadPattern;
import curbwatt.engine.load.Loads;
import curbwatt.engine.numeric.Root;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class CircuitDrawTest {
    private static final double NODE_V = 12.4;
    private static final double SMALLEST_V = 1e-3;

    @Test
    void withoutALoadTheFarEndStandsAtTheNode() {
        CircuitDraw draw = draw(0.1);
        assertThat(draw.solve(NODE_V)).isTrue();
        assertThat(draw.farV()).isEqualTo(NODE_V);
        assertThat(draw.currentA()).isZero();
        assertThat(draw.slopeAPerV()).isZero();
        assertThat(draw.feedLossW()).isZero();
    }

    @Test
    void constantCurrentDropsByOhmsLaw() {
        CircuitDraw draw = draw(0.05, Loads.current("a", 20));
        assertThat(draw.solve(NODE_V)).isTrue();
        assertThat(draw.farV()).isCloseTo(NODE_V - 1, within(1e-14));
        assertThat(draw.feedLossW()).isCloseTo(20, within(1e-13));
        assertThat(draw.slopeAPerV()).isZero();
    }

    @Test
    void aResistorMakesAVoltageDivider() {
        CircuitDraw draw = draw(0.5, Loads.resistor("a", 1.5));
        assertThat(draw.solve(12)).isTrue();
        assertThat(draw.farV()).isCloseTo(9, within(1e-13));
        assertThat(draw.currentA()).isCloseTo(6, within(1e-13));
        assertThat(draw.slopeAPerV()).isCloseTo(0.5, within(1e-13));
    }

    @Test
    void constantPowerTakesTheUpperRootOfItsQuadratic() {
        CircuitDraw draw = draw(0.1, Loads.power("a", 200));
        assertThat(draw.solve(NODE_V)).isTrue();
        double upper = (NODE_V + Math.sqrt(NODE_V * NODE_V - 4 * 0.1 * 200)) / 2;
        assertThat(draw.farV()).isCloseTo(upper, within(1e-13));
        assertThat(draw.currentA()).isCloseTo(200 / upper, within(1e-12));
        assertThat(draw.feedLossW() + 200).isCloseTo(NODE_V * draw.currentA(), within(1e-11));
    }

    @Test
    void mixedLoadsSatisfyTheirQuadratic() {
        CircuitDraw draw = draw(0.04, Loads.current("a", 5), Loads.resistor("b", 2), Loads.power("c", 120));
        assertThat(draw.solve(NODE_V)).isTrue();
        double far = draw.farV();
        assertThat(NODE_V - 0.04 * (5 + far / 2 + 120 / far)).isCloseTo(far, within(1e-13));
        assertThat(draw.currentA()).isCloseTo(5 + far / 2 + 120 / far, within(1e-12));
    }

    /** A source of V behind R gives at most V²/4R, at half its voltage (maximum-power theorem). */
    @Test
    void collapsesExactlyAboveTheMaximumPower() {
        double limitW = NODE_V * NODE_V / (4 * 0.2);
        CircuitDraw just = draw(0.2, Loads.power("a", limitW * (1 - 1e-12)));
        assertThat(just.solve(NODE_V)).isTrue();
        assertThat(just.farV()).isCloseTo(NODE_V / 2, within(1e-4));
        CircuitDraw over = draw(0.2, Loads.power("a", limitW * (1 + 1e-12)));
        assertThat(over.solve(NODE_V)).isFalse();
        assertThat(over.currentA()).isZero();
        assertThat(over.feedLossW()).isZero();
        assertThat(over.slopeAPerV()).isZero();
    }

    @Test
    void aCurrentThatTheFeedCannotCarryCollapses() {
        assertThat(draw(1, Loads.current("a", 12.3)).solve(NODE_V)).isTrue();
        assertThat(draw(1, Loads.current("a", 12.5)).solve(NODE_V)).isFalse();
    }

    @Test
    void collapsesAndRecoversWithTheNode() {
        CircuitDraw draw = draw(0.2, Loads.power("a", 180));
        assertThat(draw.solve(12.1)).isTrue();
        assertThat(draw.solve(11.9)).isFalse();
        assertThat(draw.solve(12.1)).isTrue();
    }

    @Test
    void clearedItDrawsNothing() {
        CircuitDraw draw = draw(0.1, Loads.current("a", 5), lamp(4, 0.55));
        draw.clear();
        assertThat(draw.solve(NODE_V)).isTrue();
        assertThat(draw.currentA()).isZero();
    }

    @Test
    void slopeIsTheDerivativeOverTheNodeVoltage() {
        CircuitDraw draw = draw(0.05, Loads.resistor("a", 2), Loads.power("b", 150), lamp(5, 0.55), lamp(3, -0.4));
        draw.solve(NODE_V + 1e-5);
        double aboveA = draw.currentA();
        draw.solve(NODE_V - 1e-5);
        double belowA = draw.currentA();
        draw.solve(NODE_V);
        assertThat(draw.slopeAPerV()).isCloseTo((aboveA - belowA) / 2e-5, within(1e-6));
    }

    /** The solution with the highest voltage, found by walking down and Brent's method, is the one that comes out. */
    @Test
    void generalExponentsAgreeWithBrent() {
        SplittableRandom random = new SplittableRandom(20240);
        int solved = 0;
        int collapsed = 0;
        for (int trial = 0; trial < 2000; trial++) {
            double feedOhm = Math.pow(10, random.nextDouble(-3, 0.5));
            List<Load> loads = new ArrayList<>();
            int count = random.nextInt(1, 5);
            for (int i = 0; i < count; i++) {
                loads.add(lamp(Math.pow(10, random.nextDouble(-1, 1.7)), random.nextDouble(-1, 2)));
            }
            double highest = highestRootV(feedOhm, loads);
            CircuitDraw draw = draw(feedOhm, loads.toArray(Load[]::new));
            boolean ours = draw.solve(NODE_V);
            if (Double.isNaN(highest)) {
                // a lamp's current goes to nothing with its voltage, so there is always a root, if a silly one
                assertThat(ours && draw.farV() > SMALLEST_V)
                        .as("%s behind %s Ω has no solution", loads, feedOhm)
                        .isFalse();
                collapsed++;
            } else {
                assertThat(ours)
                        .as("%s behind %s Ω at %s V", loads, feedOhm, highest)
                        .isTrue();
                assertThat(draw.farV()).isCloseTo(highest, within(1e-9));
                solved++;
            }
        }
        assertThat(solved).isGreaterThan(800);
        assertThat(collapsed).isGreaterThan(200);
    }

    /** Down in small steps to a millivolt; NaN: no root as high as that. */
    private static double highestRootV(double feedOhm, List<Load> loads) {
        double gridV = NODE_V / 5000;
        double highV = NODE_V;
        while (highV > SMALLEST_V) {
            double lowV = Math.max(highV - gridV, highV / 2);
            if (missingV(feedOhm, loads, lowV) >= 0) {
                return Root.between(v -> missingV(feedOhm, loads, v), lowV, highV, 1e-13);
            }
            highV = lowV;
        }
        return Double.NaN;
    }

    private static double missingV(double feedOhm, List<Load> loads, double farV) {
        return NODE_V
                - farV
                - feedOhm
                        * loads.stream()
                                .mapToDouble(load -> load.currentA(farV))
                                .sum();
    }

    private static Load lamp(double currentA, double voltageExponent) {
        return Loads.load("lamp", currentA, voltageExponent, new LoadPattern.Continuous());
    }

    private static CircuitDraw draw(double feedOhm, Load... loads) {
        CircuitDraw draw = new CircuitDraw(feedOhm);
        for (Load load : loads) {
            draw.add(load);
        }
        return draw;
    }
}
