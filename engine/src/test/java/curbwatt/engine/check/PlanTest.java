package curbwatt.engine.check;

import static curbwatt.engine.check.Planted.assertAccepts;
import static curbwatt.engine.check.Planted.assertReports;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import curbwatt.planted.high.High;
import curbwatt.planted.low.Low;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class PlanTest {

    private static final List<String> JAVA = List.of("java.lang..", "java.util..");

    private final Plan plan = Plan.of("curbwatt.planted", JAVA, """
            low
            high: low
            roof: *
            """);

    private final JavaClasses both = new ClassFileImporter().importClasses(Low.class, High.class);

    @Test
    void readsRowsInOrder() {
        assertThat(plan.rows())
                .containsExactly(
                        Map.entry("low", List.of()),
                        Map.entry("high", List.of("low")),
                        Map.entry("roof", List.of("low", "high")));
    }

    @Test
    void aRowThatLooksUpIsReported() {
        assertReports(plan.allows("low"), Low.class);
    }

    @Test
    void aRowThatLooksDownIsAccepted() {
        assertAccepts(plan.allows("high"), High.class);
    }

    @Test
    void aLibraryThatThePlanDoesNotNameIsReported() {
        Plan bare = Plan.of("curbwatt.planted", List.of("java.lang.."), "low\nhigh: low");
        assertReports(bare.allows("high"), High.class);
    }

    @Test
    void aCycleIsReported() {
        assertThat(plan.noCycles().evaluate(both).hasViolation()).isTrue();
    }

    @Test
    void rowsWithoutClassesAreSkipped() {
        assertThat(plan.present(both)).containsExactly("low", "high");
    }

    @Test
    void aPackageWithoutARowIsNamed() {
        assertThat(Plan.of("curbwatt.planted", JAVA, "low").unplanned(both)).containsExactly("high");
        assertThat(Plan.of("curbwatt.planted.low", JAVA, "high").unplanned(both))
                .contains("curbwatt.planted.low");
    }

    @Test
    void aPlanThatPointsUpIsRefused() {
        assertThatThrownBy(() -> Plan.of("curbwatt.planted", JAVA, "low: high\nhigh"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("low: high");
    }

    @Test
    void aRowNamedTwiceIsRefused() {
        assertThatThrownBy(() -> Plan.of("curbwatt.planted", JAVA, "low\nlow"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("two rows");
    }
}
