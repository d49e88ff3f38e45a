package curbwatt.charts.wording;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.charts.run.RunStory;
import curbwatt.charts.run.SampleRun;
import curbwatt.engine.event.Event;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.verdict.Doubt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class WordsForEachKindTest {

    @ParameterizedTest
    @EnumSource
    void everyEventIsASentence(EventKind kind) {
        assertThat(EventText.sentence(new Event(60, kind, "Radios", 11.8, 0.7)))
                .matches("[A-Z'].*\\.")
                .doesNotContain("_");
    }

    @ParameterizedTest
    @EnumSource
    void everyDoubtSaysWhichNumberNotToTrust(Doubt.Kind kind) {
        assertThat(DoubtText.sentence(new Doubt(kind, "Radios")))
                .matches("[A-Z].*: .*\\.")
                .contains("'Radios'")
                .doesNotContain("_");
    }

    @Test
    void theNodeIsCalledTheBattery() {
        assertThat(EventText.sentence(new Event(60, EventKind.VOLTAGE_COLLAPSED, "node", 6, 0.2)))
                .startsWith("The voltage at the battery collapses");
    }

    @Test
    void aBatteryThatCannotCrankHasNoVoltage() {
        assertThat(EventText.sentence(
                        new Event(60, EventKind.ENGINE_DID_NOT_START, "Idle", Double.NEGATIVE_INFINITY, 0.1)))
                .isEqualTo("The engine does not start: the battery cannot deliver the cranking current. It stays off.");
    }

    @ParameterizedTest
    @EnumSource
    void chartsAreTitledAfterTheirFinding(SampleRun run) {
        ChartTitle title = new ChartTitle(run.story());
        assertThat(title.voltage().title()).doesNotContain("Infinity").matches(".*\\d.*");
        assertThat(title.balance().title()).isNotBlank();
        // two heads in turn without a gap draw a steady current
        assertThat(title.flash().title())
                .matches(
                        run == SampleRun.IN_TURN
                                ? "Flashing does not move the voltage, .* V"
                                : "Flashing swings the voltage between .* V and .* V");
    }

    @Test
    void cautionsFollowTheScene() {
        RunStory story = SampleRun.HOLDS.story();
        assertThat(Cautions.of(story.scenario().vehicle(), story.scenario().scene()))
                .anyMatch(line -> line.contains("explosive gas"))
                .anyMatch(line -> line.contains("amperes"))
                .anyMatch(line -> line.contains("Exhaust"))
                .anyMatch(line -> line.contains("Radios"))
                .anyMatch(line -> line.contains("licensed practice"));
    }

    @Test
    void ledgersSayThatTheyClose() {
        RunStory story = SampleRun.HOLDS.story();
        assertThat(LedgerText.charge(story.result())).last().asString().contains("less than a millionth");
        assertThat(LedgerText.energy(story.result())).hasSize(3);
    }
}
