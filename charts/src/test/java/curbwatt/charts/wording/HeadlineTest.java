package curbwatt.charts.wording;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.charts.run.RunStory;
import curbwatt.charts.run.SampleRun;
import curbwatt.engine.verdict.Finding;
import curbwatt.engine.verdict.Requirement;
import curbwatt.engine.verdict.Verdict;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

class HeadlineTest {

    private static final Requirement HOLD = new Requirement.HoldCircuits(Set.of("Scene lights"), 7200);

    @Test
    void whatHoldsIsSaidWithItsCrankingMargin() {
        assertThat(of(SampleRun.HOLDS))
                .matches(
                        "Holds 'Radios, desk' and 'Scene lights' for the 30 min asked and starts again with \\d\\.\\d\\d V to"
                                + " spare\\.");
    }

    @Test
    void aCutoffThatOpensTooEarlyIsNamedWithTimeAndCharge() {
        assertThat(of(SampleRun.CUT_OFF_EARLY))
                .matches(
                        "Cut off too early: 'Scene power' opens after \\d\\d min with 8\\d % charge left; asked were 1 h\\.");
    }

    @Test
    void aStrandedCrewIsToldFromWhenOn() {
        assertThat(of(SampleRun.STRANDS))
                .matches("Strands the crew: the engine would not start from 3 h \\d+ min on\\.");
    }

    @Test
    void aSilentRadioIsALossWithoutACutoff() {
        assertThat(of(SampleRun.DROPS_OUT))
                .matches(
                        "Lost too early: 'Radio' drops out after \\d+ min: its voltage falls below 12\\.35 V; asked were 1 h\\.");
    }

    @Test
    void withoutRequirementsThereIsNoVerdict() {
        assertThat(of(SampleRun.ASKS_NOTHING)).isEqualTo("Nothing was asked of this scene.");
    }

    @Test
    void aThinMarginIsNotAStranding() {
        assertThat(with(SampleRun.HOLDS, new Finding(new Requirement.WillStart(0.3), false, 0.2, 0.3, "V", "", at(60))))
                .isEqualTo("Starts again, but with 0.20 V to spare instead of 0.30 V.");
    }

    @Test
    void aFigureJustBelowItsLimitDoesNotLookAsIfItMetIt() {
        assertThat(with(
                        SampleRun.HOLDS,
                        new Finding(new Requirement.WillStart(0.3), false, 0.29996, 0.3, "V", "", at(60))))
                .isEqualTo("Starts again, but with 0.29996 V to spare instead of 0.30000 V.");
    }

    @Test
    void strandingOutweighsALostCircuit() {
        assertThat(with(
                        SampleRun.STRANDS,
                        new Finding(HOLD, false, 48, 120, "min", "Scene power", at(2880)),
                        new Finding(new Requirement.WillStart(0), false, -0.4, 0, "V", "Lane watch", at(7200))))
                .startsWith("Strands the crew:");
    }

    @Test
    void lowVoltageAndLowChargeAreNamed() {
        assertThat(with(
                        SampleRun.DROPS_OUT,
                        new Finding(new Requirement.KeepVoltage("Radios, desk", 11), false, 10.6, 11, "V", "", none())))
                .isEqualTo("Too little voltage: 'Radios, desk' is down to 10.60 V; asked were 11.00 V.");
        assertThat(with(
                        SampleRun.STRANDS,
                        new Finding(new Requirement.KeepCharge(0.5), false, 0.38, 0.5, "1", "", none())))
                .matches("Drains the battery too far: below 50 % charge after \\d h.*, down to 38 %\\.");
    }

    @Test
    void aSceneTooShortForWhatIsAskedIsSaidToBe() {
        assertThat(with(SampleRun.HOLDS, new Finding(HOLD, false, 32, 120, "min", "", none())))
                .isEqualTo("Lost too early: the scene ends after 32 min; asked were 2 h.");
    }

    private static OptionalDouble at(double timeS) {
        return OptionalDouble.of(timeS);
    }

    private static OptionalDouble none() {
        return OptionalDouble.empty();
    }

    private static String of(SampleRun run) {
        return new Headline(run.story()).sentence();
    }

    private static String with(SampleRun run, Finding... findings) {
        RunStory story = run.story();
        return new Headline(new RunStory(
                        story.scenario(),
                        story.result(),
                        story.trace(),
                        story.waveform(),
                        new Verdict(List.of(findings), List.of())))
                .sentence();
    }
}
