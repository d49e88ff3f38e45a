package curbwatt.engine.study.settings;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.engine.control.RecloseRule;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Made once, runs without an opening give what runs of their own give; the rule is the reference. */
class QuietRunsTest {

    private static final RecloseRule BY_HAND = new RecloseRule.ByHand();
    private static final TripSetting MILDEST = new TripSetting(BY_HAND, 10.6, 1800);

    private final List<TripSetting> made = new ArrayList<>();

    private static List<TripSetting> settings() {
        List<TripSetting> all = new ArrayList<>();
        for (int level = 106; level <= 126; level++) {
            for (double delayS : new double[] {1, 10, 60, 300, 1800}) {
                all.add(new TripSetting(BY_HAND, level / 10.0, delayS));
            }
        }
        return all;
    }

    /** A night whose voltage is below 11.5 V for a minute at a time, and below 12 V for most of it. */
    private static boolean opens(TripSetting setting) {
        return setting.tripV() > 12 ? setting.tripDelayS() < 1800 : setting.tripV() > 11.5 && setting.tripDelayS() < 60;
    }

    private Trial.Run run(TripSetting setting) {
        made.add(setting);
        boolean opens = opens(setting);
        OptionalDouble openedS = opens ? OptionalDouble.of(1000 * setting.tripV()) : OptionalDouble.empty();
        return new Trial.Run(
                Optional.of(
                        new Fate(List.of(), OptionalDouble.of(3600), OptionalDouble.of(1.5), openedS, opens ? 1 : 0)),
                opens);
    }

    @Test
    void inAnyOrderTheAnswersAreThoseOfRunsOfTheirOwn() {
        for (int seed = 0; seed < 20; seed++) {
            List<TripSetting> shuffled = settings();
            Collections.shuffle(shuffled, new Random(seed));
            QuietRuns runs = new QuietRuns(this::run, MILDEST);
            for (TripSetting setting : shuffled) {
                assertThat(runs.fate(setting))
                        .as("%s", setting)
                        .isEqualTo(run(setting).fate());
            }
        }
    }

    @Test
    void fromTheMildestOnThoseThatNeverOpenTakeOneRun() {
        QuietRuns runs = new QuietRuns(this::run, MILDEST);
        List<TripSetting> all = settings();
        runs.fate(MILDEST);
        int first = made.size();
        all.forEach(runs::fate);
        long opening = all.stream().filter(QuietRunsTest::opens).count();
        long quiet = all.size() - opening;
        assertThat(first).isEqualTo(2);
        assertThat(quiet).isGreaterThan(60);
        // every opening one has its own; of the others those on the edge towards more levels and shorter delays
        assertThat(made.size() - first).isBetween((int) opening, (int) (opening + quiet / 2));
    }

    @Test
    void whereTheMildestOpensEachHasARunOfItsOwn() {
        QuietRuns runs = new QuietRuns(
                setting -> {
                    made.add(setting);
                    return new Trial.Run(run(setting).fate(), true);
                },
                MILDEST);
        made.clear();
        settings().forEach(runs::fate);
        assertThat(made.stream().distinct()).hasSameSizeAs(settings());
    }
}
