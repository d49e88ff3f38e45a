package curbwatt.engine.study.size;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.BatteryParameters;
import curbwatt.engine.study.HeldBackTruck;
import curbwatt.engine.study.HeldBackTruck.Build;
import curbwatt.engine.study.Question;
import curbwatt.engine.study.RunPool;
import curbwatt.engine.study.StudyWatch;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Vehicles that the sizing was not made on: every size on a fine scale by a run of its own, built by hand here, as the
 * battery is stated and in every draw.
 */
class BruteSizeTest {

    private static final double TRIP_V = 11.4;
    private static final double DELAY_S = 60;
    private static final double HEALTH = 0.8;
    private static final double GROWTH = 1.25;
    private static final double STEP = 1.025;
    private static final double SMALLEST_AH = 20;
    private static final double LARGEST_AH = 400;
    private static final int DRAWS = 6;
    private static final double ODDS = 0.8;

    /** The first two points of the sequence, the cube's corner and its middle, are passed over. */
    private static final int FIRST_POINT = 2;

    private static final Spread SPREAD = new Spread(4, 0.05, 0.08);

    /** Age, temperature and load of one try. */
    private record Try(double health, double warmerK, double loadFactor) {}

    static Stream<HeldBackTruck> trucks() {
        return HeldBackTruck.all().stream();
    }

    @ParameterizedTest
    @MethodSource("trucks")
    void theSmallestBatteryOfASweepIsThatOfTheStudy(HeldBackTruck truck) {
        Question asIs = truck.question(truck.at(TRIP_V, DELAY_S));
        SizePlan plan = new SizePlan(
                OptionalDouble.of(HEALTH), OptionalDouble.of(GROWTH), OptionalDouble.empty(), ODDS, DRAWS, SPREAD, 1.1);
        SizeResult.Steps steps = new SizeStudy(asIs, plan, List.of())
                .run(new RunPool(2), StudyWatch.none())
                .steps();

        double stated = smallest(truck, new Try(HEALTH, 0, 1));
        assertThat(steps.stated().holdsAh().orElseThrow()).isCloseTo(stated, within(0.03 * stated));
        List<Double> needs = Stream.iterate(FIRST_POINT, i -> i + 1)
                .limit(DRAWS)
                .map(i -> smallest(truck, draw(i)))
                .sorted()
                .toList();
        double atOdds = needs.get((int) Math.ceil(ODDS * DRAWS) - 1);
        assertThat(steps.atOdds().holdsAh().orElseThrow()).isCloseTo(atOdds, within(0.03 * atOdds));
        assertThat(atOdds).isGreaterThan(stated);
    }

    /** From large to small; the last that holds before the first that does not. */
    private static double smallest(HeldBackTruck truck, Try tried) {
        double holds = Double.NaN;
        for (double sizeAh = LARGEST_AH; sizeAh > SMALLEST_AH && isMet(truck, tried, sizeAh); sizeAh /= STEP) {
            holds = sizeAh;
        }
        return holds;
    }

    private static boolean isMet(HeldBackTruck truck, Try tried, double sizeAh) {
        BatteryParameters sized =
                truck.second().map(HeldBackTruck.Second::battery).orElse(truck.battery());
        Battery battery =
                HeldBackTruck.aged(HeldBackTruck.sized(sized, sizeAh / sized.ratedC20Ah()), tried.health(), GROWTH);
        Build build = truck.second().isPresent()
                ? new Build(
                        TRIP_V,
                        DELAY_S,
                        0,
                        HeldBackTruck.aged(truck.battery(), 1, 1),
                        Optional.of(battery),
                        tried.warmerK(),
                        tried.loadFactor())
                : new Build(TRIP_V, DELAY_S, 0, battery, Optional.empty(), tried.warmerK(), tried.loadFactor());
        return truck.question(build).answer().isMet();
    }

    /**
     * A point of the Halton sequence (Halton 1960) in the bases 2, 3 and 5, its digits multiplied by 1, 2 and 3 as Kocis and
     * Whiten (1997) scramble them, taken through the normal law.
     */
    private static Try draw(int index) {
        NormalDistribution normal = new NormalDistribution();
        return new Try(
                HEALTH + SPREAD.capacityFraction() * normal.inverseCumulativeProbability(mirrored(index, 2, 1)),
                SPREAD.temperatureK() * normal.inverseCumulativeProbability(mirrored(index, 3, 2)),
                1 + SPREAD.loadFraction() * normal.inverseCumulativeProbability(mirrored(index, 5, 3)));
    }

    /** Digits of a number in a base, each multiplied in the base, mirrored at the point. */
    private static double mirrored(int index, int base, int multiplier) {
        double value = 0;
        double digit = 1.0 / base;
        for (int left = index; left > 0; left /= base) {
            value += digit * (multiplier * (left % base) % base);
            digit /= base;
        }
        return value;
    }
}
