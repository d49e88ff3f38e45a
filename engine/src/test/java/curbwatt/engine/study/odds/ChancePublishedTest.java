package curbwatt.engine.study.odds;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.engine.check.Published;
import curbwatt.engine.check.Published.Obtained;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Bounds of a chance against published ones, and chances against closed forms. */
class ChancePublishedTest {

    private static final String TOPIC = "Chances: bounds";
    private static final Spread.Possible ALL = new Spread.Possible(-100, 100, "");

    @ParameterizedTest
    @CsvSource({"81, 263, 0.2553, 0.3662", "15, 148, 0.0624, 0.1605", "0, 20, 0.0000, 0.1611", "1, 29, 0.0061, 0.1718"})
    void scoreInterval(int hits, int draws, double low, double high, TestReporter reporter) {
        Chance ours = Chance.ofIndependent(hits, draws);
        String source = "Newcombe, Statistics in Medicine 17 (1998), table I, method 3";
        String what = "score interval, 95 %, " + hits + " of " + draws + ": ";
        new Published(TOPIC, what + "lower", "1", low, 0.00006, Obtained.MEMORY, source)
                .check(ours.lowFraction(), reporter);
        new Published(TOPIC, what + "upper", "1", high, 0.00006, Obtained.MEMORY, source)
                .check(ours.highFraction(), reporter);
    }

    @Test
    void allOrNoneHasAnEndAtOneOrZeroAndStillSomeWidth() {
        Chance all =
                Chance.ofReplicates(IntStream.range(0, 1024).mapToObj(i -> true).toList());
        assertThat(all.method()).isEqualTo(Chance.Method.WILSON);
        assertThat(all.highFraction()).isEqualTo(1);
        assertThat(all.lowFraction()).isBetween(0.99, 0.9999);
        assertThat(Chance.ofIndependent(0, 1024).lowFraction()).isZero();
    }

    /** x1 + 2 x2 + 3 x3 of standard normal figures lies below c with the chance Φ(c / √14). */
    @ParameterizedTest
    @CsvSource({"SOBOL, 2", "SOBOL, -4", "SEEDED, 2", "SEEDED, -4"})
    void chanceOfALinearCase(Sampling sampling, double limit, TestReporter reporter) {
        int draws = 4096;
        Spread normal = new Spread(Spread.Shape.NORMAL, 0, 1, -8, 8, "");
        List<Boolean> below = new UnitPoints(sampling, 11, 3)
                .points(draws).stream()
                        .map(point -> normal.valueAt(point.get(0), ALL)
                                        + 2 * normal.valueAt(point.get(1), ALL)
                                        + 3 * normal.valueAt(point.get(2), ALL)
                                < limit)
                        .toList();
        Chance chance = sampling == Sampling.SOBOL
                ? Chance.ofReplicates(below)
                : Chance.ofIndependent((int) below.stream().filter(hit -> hit).count(), draws);
        double exact = new NormalDistribution().cumulativeProbability(limit / Math.sqrt(14));
        new Published(
                        TOPIC,
                        "x1 + 2 x2 + 3 x3 < " + limit + ", standard normal, 4096 draws, " + sampling,
                        "1",
                        exact,
                        sampling == Sampling.SOBOL ? 0.01 : 0.02,
                        Obtained.DERIVED,
                        "a sum of independent normal figures is normal")
                .check(chance.fraction(), reporter);
        assertThat(exact).isBetween(chance.lowFraction(), chance.highFraction());
    }

    /** Ninety-five in a hundred intervals hold the truth, give or take what a hundred can tell. */
    @ParameterizedTest
    @CsvSource({"SOBOL", "SEEDED"})
    void intervalsHoldTheTruthAsOftenAsTheySay(Sampling sampling) {
        long holding = IntStream.range(0, 400)
                .mapToObj(seed -> {
                    List<Boolean> inside = new UnitPoints(sampling, seed, 2)
                            .points(1024).stream()
                                    .map(point -> Math.hypot(point.get(0), point.get(1)) < 1)
                                    .toList();
                    return sampling == Sampling.SOBOL
                            ? Chance.ofReplicates(inside)
                            : Chance.ofIndependent(
                                    (int) inside.stream().filter(hit -> hit).count(), inside.size());
                })
                .filter(chance -> chance.lowFraction() <= Math.PI / 4 && Math.PI / 4 <= chance.highFraction())
                .count();
        assertThat(holding).isBetween(365L, 395L);
    }

    @Test
    void evenDrawsTellMoreThanDrawsAtRandom() {
        List<Boolean> inside = new UnitPoints(Sampling.SOBOL, 1, 2)
                .points(4096).stream()
                        .map(point -> Math.hypot(point.get(0), point.get(1)) < 1)
                        .toList();
        Chance even = Chance.ofReplicates(inside);
        Chance random = Chance.ofIndependent(even.hits(), even.draws());
        assertThat(even.highFraction() - even.lowFraction())
                .isLessThan(0.7 * (random.highFraction() - random.lowFraction()));
    }
}
