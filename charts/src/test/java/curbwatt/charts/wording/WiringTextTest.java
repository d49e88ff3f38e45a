package curbwatt.charts.wording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curbwatt.charts.run.CircuitWiring;
import curbwatt.charts.run.SampleRun;
import curbwatt.engine.wiring.CircuitCurrent;
import curbwatt.engine.wiring.CircuitPlan;
import curbwatt.engine.wiring.DropLimit;
import curbwatt.engine.wiring.FuseRating;
import curbwatt.engine.wiring.FuseType;
import curbwatt.engine.wiring.InstalledFuse;
import curbwatt.engine.wiring.WireGauge;
import curbwatt.engine.wiring.WireRun;
import curbwatt.engine.wiring.WireSpace;
import curbwatt.scenarios.assemble.ReadyScenario;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class WiringTextTest {

    private static final ReadyScenario CHARGER = SampleRun.CHARGER.story().scenario();

    private static WiringText text(CircuitPlan... plans) {
        return new WiringText(
                CircuitWiring.of(CHARGER, List.of(plans)), CHARGER.vehicle().cutoffs());
    }

    /** 22 A through 12 mΩ, worked by hand. */
    @Test
    void theLargestDropIsMarkedInWords() {
        WiringText text = text();
        assertThat(text.largest()).hasValue(2);
        assertThat(text.circuits().get(2).meanDropV()).isCloseTo(0.264, within(1e-9));
        assertThat(text.drops().get(2))
                .startsWith("Scene lights", "largest drop; within 3 %")
                .contains("0.26", "2.20");
        assertThat(text.drops())
                .filteredOn(line -> line.get(1).contains("largest"))
                .hasSize(1);
    }

    @Test
    void aCutoffsOwnSenseDropIsSaid() {
        assertThat(text().senseDrops())
                .singleElement()
                .asString()
                .contains("'Light cutoff' senses at the end of 'Scene lights'", "reads 0.26 V less", "12.06 V");
    }

    @Test
    void withoutWiresNothingIsFound() {
        assertThat(text().findings()).isEmpty();
        assertThat(text().remedies()).isEmpty();
    }

    /** A wire of 16 AWG behind 30 A: what breaks a rule comes first, with its source, and what would do is named. */
    @Test
    void brokenRulesComeFirstWithTheirSource() {
        CircuitPlan plan = new CircuitPlan(
                "Scene lights",
                CircuitCurrent.steady(20),
                WireRun.ofGauge(new WireGauge(16), 5),
                new CircuitPlan.Place(WireSpace.OUTSIDE_ENGINE_SPACE, 1, 20, 20),
                Optional.of(new InstalledFuse(new FuseRating(FuseType.BLADE, 30), 20)),
                DropLimit.OTHER,
                12);
        WiringText text = text(plan);
        assertThat(text.findings()).hasSize(7);
        assertThat(text.findings().subList(0, 3))
                .allSatisfy(line -> assertThat(line.get(1)).isEqualTo("NOT KEPT"));
        assertThat(text.findings().subList(3, 7))
                .allSatisfy(line -> assertThat(line.get(1)).isEqualTo("kept"));
        assertThat(text.findings()).allSatisfy(line -> assertThat(line.get(5)).isNotBlank());
        assertThat(text.remedies())
                .containsExactly("'Scene lights' would be served by a fuse of 25 A and SAE 10 or 4 mm².");
    }
}
