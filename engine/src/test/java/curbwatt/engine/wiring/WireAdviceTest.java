package curbwatt.engine.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class WireAdviceTest {
    private static final CircuitPlan.Place CABIN = new CircuitPlan.Place(WireSpace.OUTSIDE_ENGINE_SPACE, 1, 20, 20);

    private static CircuitPlan plan(CircuitCurrent current, WireSize size, double lengthM, double fuseA) {
        Optional<InstalledFuse> fuse = fuseA == 0
                ? Optional.empty()
                : Optional.of(new InstalledFuse(new FuseRating(FuseType.BLADE, fuseA), 20));
        WireRun run = new WireRun(size.areaMm2(), lengthM, new WireRun.Return.SameWire());
        return new CircuitPlan("beacons", current, run, CABIN, fuse, DropLimit.OTHER, 12);
    }

    private static List<WiringRule> broken(WireAdvice advice) {
        return advice.findings().stream()
                .filter(finding -> !finding.met())
                .map(WiringFinding::rule)
                .toList();
    }

    /** 10 AWG, 5 m each way, 20 A: 0.6554 V in the wire and 20 A through 0.1 V/30 A of fuse, worked by hand. */
    @Test
    void aSoundCircuit() {
        WireAdvice advice = WireAdvice.of(plan(new CircuitCurrent(20, 20, 40, 0.1), new WireGauge(10), 5, 30));
        assertThat(advice.dropV()).isCloseTo(0.6554 + 20 * 0.1 / 30, within(1e-4));
        assertThat(advice.peakDropV()).isCloseTo(2 * advice.dropV(), within(1e-12));
        assertThat(broken(advice)).isEmpty();
        assertThat(advice.allMet()).isTrue();
        assertThat(advice.findings()).hasSize(WiringRule.values().length);
        assertThat(advice.fuse()).contains(new FuseRating(FuseType.BLADE, 25));
    }

    /** SAE 12 and the fuse's 0.067 V would be 1.23 V of the 1.20 V allowed, 4 mm² 1.06 V; worked by hand. */
    @Test
    void aThinLongWireDropsTooMuchAndIsTooWeakForItsFuse() {
        WireAdvice advice = WireAdvice.of(plan(CircuitCurrent.steady(20), new WireGauge(16), 5, 30));
        assertThat(broken(advice))
                .containsExactly(WiringRule.DROP, WiringRule.FUSE_PROTECTS_WIRE, WiringRule.WIRE_EXCEEDS_FUSE);
        assertThat(advice.cable().orElseThrow().label()).isEqualTo("SAE 10");
        assertThat(advice.metric().orElseThrow().label()).isEqualTo("4 mm²");
    }

    @Test
    void aFuseTooSmallForLoadAndPeak() {
        WireAdvice advice = WireAdvice.of(plan(new CircuitCurrent(9, 9, 60, 1), new WireGauge(8), 2, 10));
        assertThat(broken(advice)).containsExactly(WiringRule.FUSE_CARRIES_LOAD, WiringRule.FUSE_OUTLASTS_PEAK);
        assertThat(advice.fuse()).contains(new FuseRating(FuseType.MAXI, 30));
    }

    @Test
    void noFuseIsAFinding() {
        assertThat(broken(WireAdvice.of(plan(CircuitCurrent.steady(5), new WireGauge(10), 2, 0))))
                .containsExactly(WiringRule.FUSE_PRESENT);
    }

    @Test
    void nothingSoldCarriesTwoThousandAmperes() {
        WireAdvice advice = WireAdvice.of(plan(CircuitCurrent.steady(2000), new WireGauge(-3), 2, 40));
        assertThat(advice.fuse()).isEmpty();
        assertThat(advice.cable()).isEmpty();
        assertThat(advice.metric()).isEmpty();
    }

    @Test
    void whatIsAdvisedKeepsTheRulesItWasChosenBy() {
        for (double currentA = 1; currentA < 60; currentA *= 1.3) {
            for (double lengthM = 1; lengthM < 8; lengthM += 2) {
                CircuitPlan plan = plan(CircuitCurrent.steady(currentA), new WireGauge(18), lengthM, 0);
                WireAdvice advice = WireAdvice.of(plan);
                FuseRating fuse = advice.fuse().orElseThrow();
                WireSize size = advice.cable().orElseThrow();
                assertThat(currentA).isLessThanOrEqualTo(0.8 * fuse.ratedA());
                assertThat(new Ampacity().limitA(size.areaMm2(), WireSpace.OUTSIDE_ENGINE_SPACE, 1))
                        .isGreaterThanOrEqualTo(fuse.ratedA());
                assertThat(plan.inCopper(size).dropV(currentA)).isLessThanOrEqualTo(1.2);
            }
        }
    }

    static List<List<WireSize>> drums() {
        return List.of(WireSize.gauges(), WireSize.vehicleCables(), WireSize.metric());
    }

    @ParameterizedTest
    @MethodSource("drums")
    void aBiggerWireNeverDropsMoreNorCarriesLess(List<WireSize> sizes) {
        Ampacity ampacity = new Ampacity();
        double beforeV = Double.POSITIVE_INFINITY;
        double beforeA = 0;
        for (WireSize size : sizes) {
            double nowV = plan(CircuitCurrent.steady(20), size, 5, 0).dropV(20);
            assertThat(nowV).isLessThan(beforeV);
            beforeV = nowV;
            if (ampacity.covers(size.areaMm2())) {
                double nowA = ampacity.limitA(size.areaMm2(), WireSpace.INSIDE_ENGINE_SPACE, 5);
                assertThat(nowA).isGreaterThan(beforeA);
                beforeA = nowA;
            }
        }
    }

    @Test
    void aluminiumNeedsMoreArea() {
        WireRun copper = new WireRun(10, 5, new WireRun.Return.SameWire());
        WireRun aluminium = new WireRun(10, 5, new WireRun.Return.SameWire(), WireMaterial.ALUMINIUM);
        assertThat(aluminium.loopOhm(20) / copper.loopOhm(20)).isCloseTo(1 / 0.61, within(0.001));
    }

    @Test
    void refusesImpossibleValues() {
        assertThatThrownBy(() -> new CircuitCurrent(10, 10, 5, 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("peakA is 5.0 A, allowed is 10.0 to 5000.0 A");
        assertThatThrownBy(() -> new MetricSize(3)).hasMessageContaining("nominalMm2 is 3.0 mm²");
        assertThatThrownBy(() -> new VehicleCable(3)).hasMessageContaining("number is 3 SAE");
        assertThatThrownBy(() -> Ampacity.bundleFactor(25)).hasMessageContaining("bundled is 25.0 conductors");
        assertThatThrownBy(() -> new Ampacity().limitA(0.1, WireSpace.OUTSIDE_ENGINE_SPACE, 1))
                .hasMessageContaining("areaMm2 is 0.1 mm²");
    }
}
