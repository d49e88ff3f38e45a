package curbwatt.engine.simulation.envelope;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.engine.load.DropOut;
import curbwatt.engine.load.FlashClock;
import curbwatt.engine.load.Inrush;
import curbwatt.engine.load.Load;
import curbwatt.engine.load.LoadPattern;
import curbwatt.engine.load.OnInterval;
import curbwatt.engine.simulation.part.LoadState;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class FlashMergeTest {

    private static final long MS = 1_000_000;

    private static final FlashMerge MERGE =
            new FlashMerge(List.of(flasher(100, 0, 40, Inrush.none()), flasher(150, 20, 30, Inrush.none())));

    @Test
    void aCycleHasASegmentBetweenEachTwoChanges() {
        MERGE.layOut(0, 300 * MS, false);

        assertThat(MERGE.endsNs()).containsExactly(ms(20, 40, 50, 100, 140, 170, 200, 240, 300));
        assertThat(lit(MERGE)).containsExactly("1-", "12", "-2", "--", "1-", "--", "-2", "1-", "--");
    }

    /** Combinations are numbered as they are met, so that a window names the same ones otherwise than a cycle. */
    @Test
    void aWindowBeginsAndEndsWithinSegments() {
        MERGE.layOut(130 * MS, 190 * MS, true);

        assertThat(MERGE.endsNs()).containsExactly(ms(140, 170, 200, 240, 300, 320));
        assertThat(lit(MERGE)).containsExactly("1-", "--", "-2", "1-", "--", "1-");
        assertThat(MERGE.combinations()).containsExactly(0, 1, 2, 0, 1, 0);
        assertThat(MERGE.codes()).hasSize(3);
    }

    @Test
    void anInrushIsASegmentOfItsOwn() {
        FlashMerge merge = new FlashMerge(List.of(flasher(100, 0, 40, new Inrush(3, 0.01))));

        merge.layOut(0, 200 * MS, false);

        assertThat(merge.endsNs()).containsExactly(ms(10, 40, 100, 110, 140, 200));
        long[] codes = merge.codes();
        assertThat(Arrays.stream(merge.combinations()).mapToObj(place -> Flasher.surges(merge.state(codes[place], 0))))
                .containsExactly(true, false, false, true, false, false);
    }

    /** What changes within a microsecond changes at one instant: no voltage is solved between. */
    @Test
    void changesWithinAnInstantAreOne() {
        FlashMerge merge =
                new FlashMerge(List.of(flasher(100, 0, 40, Inrush.none()), flasher(100, 0.0005, 40, Inrush.none())));

        merge.layOut(0, 100 * MS, false);

        assertThat(merge.endsNs()).containsExactly(ms(40, 100));
    }

    private static long[] ms(long... times) {
        long[] ns = times.clone();
        for (int i = 0; i < ns.length; i++) {
            ns[i] *= MS;
        }
        return ns;
    }

    private static List<String> lit(FlashMerge merge) {
        long[] codes = merge.codes();
        return Arrays.stream(merge.combinations())
                .mapToObj(place -> letter(merge, codes[place], 0) + letter(merge, codes[place], 1))
                .toList();
    }

    private static String letter(FlashMerge merge, long code, int flasher) {
        return Flasher.isLit(merge.state(code, flasher)) ? Integer.toString(flasher + 1) : "-";
    }

    private static Flasher flasher(double periodMs, double fromMs, double onMs, Inrush inrush) {
        LoadPattern pattern = new LoadPattern.Flashing(
                new FlashClock("clock " + periodMs, periodMs), List.of(new OnInterval(fromMs, fromMs + onMs)), 0);
        return new Flasher(
                new LoadState(new Load("head", 1, 12.8, 0, 0, DropOut.never(), pattern, Set.of(), inrush, 1)));
    }
}
