package curbwatt.charts.wording;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.charts.run.RunStory;
import curbwatt.charts.run.SampleRun;
import org.junit.jupiter.api.Test;

class FindingTextTest {

    @Test
    void aHeldCircuit() {
        FindingText text = of(SampleRun.HOLDS, 0);
        assertThat(text.asked()).isEqualTo("'Radios, desk' and 'Scene lights' stay on for 30 min");
        assertThat(text.found()).isEqualTo("throughout");
        assertThat(text.reason()).endsWith("stay on for all of the 30 min asked.");
    }

    @Test
    void aStartWithRoom() {
        FindingText text = of(SampleRun.HOLDS, 1);
        assertThat(text.asked()).isEqualTo("the engine starts with 0.30 V to spare");
        assertThat(text.found()).matches("\\d\\.\\d\\d V to spare");
        assertThat(text.reason())
                .matches("After 32 min, in 'Lane watch', the battery would hold 1\\d\\.\\d\\d V while cranking;"
                        + " 9\\.58 V are needed at 20 °C\\.");
    }

    @Test
    void aCircuitThatWasCutOff() {
        FindingText text = of(SampleRun.CUT_OFF_EARLY, 0);
        assertThat(text.found()).matches("for \\d\\d min");
        assertThat(text.reason())
                .matches(
                        "'Scene power' opens after .* with .* charge left\\. 'Radios, desk' and 'Scene lights' were to stay on for 1 h\\.");
    }

    @Test
    void chargeThatIsKeptAndChargeThatIsNot() {
        assertThat(of(SampleRun.CUT_OFF_EARLY, 1).reason())
                .matches("The battery's charge stays above 8\\d %; 50 % were asked\\.");
        assertThat(of(SampleRun.STRANDS, 1).reason())
                .matches(
                        "The battery's charge falls to 2\\d %; 50 % were asked\\. It is below that from 2 h \\d+ min on\\.");
    }

    @Test
    void aBatteryThatCannotCrankAtAll() {
        assertThat(of(SampleRun.STRANDS, 0).found()).isEqualTo("cannot crank at all");
        assertThat(of(SampleRun.STRANDS, 0).reason()).contains("cannot deliver the cranking current at all");
    }

    private static FindingText of(SampleRun run, int index) {
        RunStory story = run.story();
        return new FindingText(story.verdict().findings().get(index), story);
    }
}
