package curbwatt.scenarios.assemble;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.scenarios.file.Setting;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What the file says under {@code studies} reaches the studies; what it leaves out is the usual. */
class StudyPlansTest {

    private static final Scenarios SCENARIOS = new Scenarios();

    private static StudyPlans plans(String... settings) {
        return SCENARIOS
                .demo("lane-watch", List.of(settings).stream().map(Setting::of).toList())
                .studies();
    }

    @Test
    void withoutStudiesTheUsualHolds() {
        assertThat(plans()).isEqualTo(StudyPlans.usual());
        assertThat(plans("studies={}")).isEqualTo(StudyPlans.usual());
        assertThat(plans("studies={\"settings\": {}}")).isEqualTo(StudyPlans.usual());
    }

    @Test
    void theCutoffToSearchIsNamed() {
        assertThat(plans("studies={\"settings\": {\"cutoff\": \"Equipment cutoff\"}}")
                        .settings()
                        .cutoff())
                .contains("Equipment cutoff");
    }
}
