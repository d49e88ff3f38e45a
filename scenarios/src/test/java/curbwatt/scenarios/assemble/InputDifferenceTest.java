package curbwatt.scenarios.assemble;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.scenarios.file.Setting;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class InputDifferenceTest {

    private static final Scenarios SCENARIOS = new Scenarios();

    private static ScenarioInput input(String... settings) {
        return SCENARIOS.demoInput(
                "lane-watch", Stream.of(settings).map(Setting::of).toList());
    }

    @Test
    void theSameFileDiffersNowhere() {
        assertThat(InputDifference.among(List.of(input(), input()))).isEmpty();
        assertThat(InputDifference.among(List.of(input(), input("title=Another"))))
                .isEmpty();
    }

    @Test
    void whatIsSetStandsBesideWhatTheFileSays() {
        List<InputDifference> differences = InputDifference.among(List.of(
                input(),
                input("vehicle.cutoffs[0].tripV=11.1"),
                input("vehicle.battery.selfDischargePercentPerMonth=7", "scene.phases[0].stages=[]")));
        assertThat(differences)
                .extracting(InputDifference::path)
                .containsExactlyInAnyOrder(
                        "vehicle.cutoffs[Equipment cutoff].tripV",
                        "vehicle.battery.selfDischargePercentPerMonth",
                        "scene.phases["
                                + input().ready().scene().phases().get(0).name() + "].stages");
        InputDifference selfDischarge = differences.stream()
                .filter(difference -> difference.path().endsWith("PerMonth"))
                .findFirst()
                .orElseThrow();
        assertThat(selfDischarge.values()).containsExactly(Optional.empty(), Optional.empty(), Optional.of("7"));
    }

    /** An entry that comes earlier in one list than in the other is the same entry. */
    @Test
    void entriesOfListsAreMatchedByName() {
        String one = "[{\"name\": \"Cab\", \"loads\": [{\"name\": \"Lamp\", \"ratedCurrentA\": 2}]},"
                + " {\"name\": \"Rear\", \"loads\": [{\"name\": \"Bar\", \"ratedCurrentA\": 5}]}]";
        String other = "[{\"name\": \"Rear\", \"loads\": [{\"name\": \"Bar\", \"ratedCurrentA\": 6}]},"
                + " {\"name\": \"Cab\", \"loads\": [{\"name\": \"Lamp\", \"ratedCurrentA\": 2}]}]";
        String rest = "vehicle.cutoffs=[]";
        String scene =
                "scene={\"phases\": [{\"name\": \"Watch\", \"engine\": \"off\", \"durationMin\": 60, \"airC\": 10}]}";
        // The demo's studies speak of stages and of a cutoff that this vehicle hasn't.
        String studies = "studies=";
        String hold = "requirements={\"restartMarginV\": 0.3}";
        assertThat(InputDifference.among(List.of(
                        input("vehicle.circuits=" + one, rest, scene, hold, studies),
                        input("vehicle.circuits=" + other, rest, scene, hold, studies))))
                .containsExactly(new InputDifference(
                        "vehicle.circuits[Rear].loads[Bar].ratedCurrentA",
                        List.of(Optional.of("5"), Optional.of("6"))));
    }
}
