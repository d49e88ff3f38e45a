package curbwatt.charts.wording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curbwatt.charts.run.FlashComparison;
import curbwatt.charts.run.RunStory;
import curbwatt.charts.run.SampleRun;
import curbwatt.charts.run.TimedRun;
import org.junit.jupiter.api.Test;

class FlashTextTest {

    private static FlashComparison comparison() {
        return SampleRun.IN_TURN.story().flashing().orElseThrow();
    }

    /** The trips of both timings are tabled in docs/model-vehicle.md: two other programs found the same. */
    @Test
    void theHeadsInTurnTripWhenASteadyLoadWouldAndTogetherLater() {
        assertThat(comparison().runs()).hasSize(2);
        TimedRun together = comparison().together();
        TimedRun interleaved = comparison().interleaved();
        assertThat(interleaved.asWritten()).isTrue();
        assertThat(together.asWritten()).isFalse();
        assertThat(interleaved.trip().orElseThrow().timeS()).isCloseTo(5620.568, within(0.05));
        assertThat(together.trip().orElseThrow().timeS()).isCloseTo(6383.6, within(0.05));
        assertThat(interleaved.peakA()).isCloseTo(16, within(1e-9));
        assertThat(together.peakA()).isCloseTo(24, within(1e-9));
    }

    @Test
    void theSentencesSayWhatFollowsAndWhy() {
        FlashText text = new FlashText(comparison());
        assertThat(text.sentences())
                .contains("Interleaving the heads cuts the peak from 24 A to 16.0 A, loads of every kind counted.")
                .anyMatch(sentence -> sentence.startsWith("'cutoff' trips 12 min earlier with the heads interleaved"
                                + " than together, at 64 % charge instead of 60 %, ")
                        && sentence.contains("because between flashes the voltage comes up to 12.")
                        && sentence.endsWith("each rise above the trip level starts its delay anew."))
                .anyMatch(sentence -> sentence.startsWith("That decides the verdict. Together: Holds 'equipment'"));
        assertThat(text.lines()).extracting(line -> line.get(0)).containsExactly("together", "interleaved, as written");
        assertThat(text.lines().get(1)).contains("16.0", "0", "'cutoff' after 1 h 33 min", "1 h 33 min");
    }

    @Test
    void theRunAsWrittenIsTheRunThatTheReportIsAbout() {
        RunStory story = SampleRun.IN_TURN.story();
        assertThat(comparison().interleaved().story().result()).isEqualTo(story.result());
    }

    @Test
    void thereIsNothingToCompareWhereNoClockHasTwoHeads() {
        assertThat(SampleRun.HOLDS.story().flashing()).isEmpty();
    }
}
