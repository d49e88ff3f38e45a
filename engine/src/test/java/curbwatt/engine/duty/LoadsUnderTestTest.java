package curbwatt.engine.duty;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.engine.load.Load;
import curbwatt.engine.load.LoadPattern;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.vehicle.Vehicle;
import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class LoadsUnderTestTest {
    private static final Vehicle INSTALLED = TestTruck.drawing(20, TestTruck.cutoff(11.8, 11));
    private static final Vehicle TESTED = LoadsUnderTest.in(INSTALLED, Set.of("continuous"));

    @Test
    void switchesTheNamedCircuitsOnAndTheOthersOff() {
        assertThat(load("continuous load").isOnIn(Set.of())).isTrue();
        assertThat(load("other load").isOnIn(Set.of())).isFalse();
        assertThat(load("other load").isOnIn(Set.of("other stage"))).isFalse();
    }

    @Test
    void aLoadThatNoStageSwitchesStaysOn() {
        Load always = new Load(
                "computer",
                2,
                12.8,
                -1,
                0,
                INSTALLED.loads().findFirst().orElseThrow().dropOut(),
                new LoadPattern.Continuous(),
                Set.of());
        Vehicle tested =
                LoadsUnderTest.in(INSTALLED, Set.of("continuous"), new Circuit("extra", 0.01, List.of(always)));
        assertThat(LoadsUnderTest.in(tested, Set.of("other")).loads()).contains(always);
    }

    @Test
    void leavesEverythingElseAsItIs() {
        assertThat(TESTED)
                .usingRecursiveComparison()
                .ignoringFieldsMatchingRegexes(".*stages")
                .isEqualTo(INSTALLED);
    }

    /** The copies are made part by part. A part added to one of these records has to be copied too, and named here. */
    @Test
    void knowsEveryPartThatItCopies() {
        assertThat(parts(Vehicle.class))
                .containsExactly(
                        "name", "battery", "auxiliary", "alternator", "circuits", "cutoffs", "starting", "engine");
        assertThat(parts(Circuit.class)).containsExactly("name", "node", "feedOhm", "fuse", "loads");
        assertThat(parts(Load.class))
                .containsExactly(
                        "name",
                        "ratedCurrentA",
                        "ratedVoltageV",
                        "voltageExponent",
                        "standbyCurrentA",
                        "dropOut",
                        "pattern",
                        "stages",
                        "inrush",
                        "heads");
    }

    private static Stream<String> parts(Class<?> type) {
        return Stream.of(type.getRecordComponents()).map(RecordComponent::getName);
    }

    private static Load load(String name) {
        return TESTED.loads()
                .filter(load -> load.name().equals(name))
                .findFirst()
                .orElseThrow();
    }
}
