package curbwatt.scenarios.assemble;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import curbwatt.scenarios.file.Setting;
import curbwatt.scenarios.problem.Problem;
import curbwatt.scenarios.problem.ScenarioException;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Values set beside the file act as if the file had them, and are refused as the file would be. */
class SettingTest {

    private static final Scenarios SCENARIOS = new Scenarios();

    private static ReadyScenario demo(String... settings) {
        return SCENARIOS.demo(
                "lane-watch", Arrays.stream(settings).map(Setting::of).toList());
    }

    private static Problem refused(String... settings) {
        ScenarioException refusal = catchThrowableOfType(ScenarioException.class, () -> demo(settings));
        assertThat(refusal.problems()).hasSize(1);
        return refusal.problems().get(0);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "vehicle.cutoffs[0].tripV=11.6",
                "vehicle.cutoffs[Equipment cutoff].tripV = 11.6",
                "vehicle.cutoffs[Equipment cutoff].tripV=1.16e1"
            })
    void anEntryIsMeantByPlaceOrByName(String setting) {
        assertThat(demo(setting).vehicle().cutoffs().get(0).tripV()).isEqualTo(11.6);
    }

    @Test
    void nothingElseChanges() {
        assertThat(demo("vehicle.cutoffs[0].tripV=11.6"))
                .usingRecursiveComparison()
                .ignoringFields("vehicle.cutoffs", "assumptions")
                .isEqualTo(demo());
    }

    @Test
    void theReportSaysWhatWasSet() {
        assertThat(demo("vehicle.cutoffs[0].tripV=11.6", "scene.start=").assumptions())
                .contains("Set for this run, whatever the file says: vehicle.cutoffs[0].tripV = 11.6;"
                        + " scene.start taken out.");
    }

    @Test
    void aKeyThatTheFileLacksIsAdded() {
        assertThat(demo("vehicle.cutoffs[0].filterS=3")
                        .vehicle()
                        .cutoffs()
                        .get(0)
                        .filterTimeConstantS())
                .isEqualTo(3);
    }

    @Test
    void objectsOnTheWayToItAreAdded() {
        assertThat(demo(
                                "vehicle.idleControl.highIdleRpm=1100",
                                "vehicle.idleControl.raiseBelowV=12.8",
                                "vehicle.idleControl.releaseAboveV=13.6")
                        .vehicle()
                        .engine()
                        .highIdle())
                .isPresent();
    }

    @Test
    void aKeyWithoutValueIsTakenOut() {
        assertThat(demo("vehicle.alternator=", "requirements.leastChargePercent=")
                        .vehicle()
                        .alternator())
                .isEmpty();
    }

    @Test
    void wholeObjectsAndTextsWithoutQuotesAreValues() {
        ReadyScenario set = demo("title=A quiet night", "vehicle.battery={\"chemistry\": \"agm\", \"c20Ah\": 105}");

        assertThat(set.title()).isEqualTo("A quiet night");
        assertThat(set.vehicle().battery().battery().capacityAh()).isBetween(105.0, 108.0);
    }

    @Test
    void theLastOfTwoSettingsOfOnePlaceHolds() {
        assertThat(demo("vehicle.cutoffs[0].tripV=11.6", "vehicle.cutoffs[0].tripV=11.4")
                        .vehicle()
                        .cutoffs()
                        .get(0)
                        .tripV())
                .isEqualTo(11.4);
    }

    @Test
    void aWrongValueIsRefusedLikeThatOfAFileAndNamesTheSetting() {
        Problem problem = refused("vehicle.cutoffs[0].tripV=11,6");

        assertThat(problem.position().file()).isEqualTo("setting vehicle.cutoffs[0].tripV=11,6");
        assertThat(problem.position().line()).isZero();
        assertThat(problem.position().path()).isEqualTo("vehicle.cutoffs[0].tripV");
        assertThat(problem.message()).contains("11,6").contains("number");
    }

    @Test
    void aWrongValueDeepInAnObjectNamesTheSettingToo() {
        Problem problem = refused("vehicle.battery={\"chemistry\": \"agm\", \"c20Ah\": -5}");

        assertThat(problem.position().file()).startsWith("setting vehicle.battery=");
        assertThat(problem.position().path()).isEqualTo("vehicle.battery.c20Ah");
    }

    @Test
    void anUnknownKeyHasItsNearestName() {
        Problem problem = refused("vehicle.cutoffs[0].tripVolt=11.6");

        assertThat(problem.position().file()).startsWith("setting ");
        assertThat(problem.remedy()).contains("tripV");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "vehicle.cutoffs[1].tripV=11 | vehicle.cutoffs | has no entry '1' | Equipment cutoff",
                "vehicle.cutoffs[Equipment cutof].tripV=11 | vehicle.cutoffs | has no entry | Did you mean 'Equipment cutoff'",
                "vehicle.cutoffs.tripV=11 | vehicle.cutoffs | is a list | vehicle.cutoffs[0]",
                "vehicle[0]=11 | vehicle | is no list | .0",
                "vehicle.batery.c20Ah=70 | vehicle.batery | 'batery' is not known | Did you mean 'battery'",
                "vehicle.batery[0].c20Ah=70 | vehicle.batery | has no key 'batery' | battery",
                "vehicle.batery.c20Ah= | vehicle.batery | has no key 'batery' | battery",
                "title.text=x | title | single value | itself",
                "vehicle.circuits[0]= | vehicle.circuits[0] | Only keys | another value",
                "vehicle.auxiliary= | vehicle.auxiliary | has no key 'auxiliary' | battery"
            })
    void aPlaceThatIsNotThereIsRefused(String setting, String path, String message, String remedy) {
        Problem problem = refused(setting);

        assertThat(problem.position().path()).isEqualTo(path);
        assertThat(problem.message()).contains(message);
        assertThat(problem.remedy()).contains(remedy);
    }

    @Test
    void allMisplacedSettingsComeAtOnce() {
        ScenarioException refusal = catchThrowableOfType(
                ScenarioException.class,
                () -> SCENARIOS.demo("lane-watch", List.of(Setting.of("a[1].b=1"), Setting.of("c[0]=1"))));

        assertThat(refusal.problems()).hasSize(2);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "tripV", "=11", "a..b=1", "a[=1", "a]b=1"})
    void whatIsNoSettingIsRefused(String text) {
        assertThatThrownBy(() -> Setting.of(text)).isInstanceOf(IllegalArgumentException.class);
    }
}
