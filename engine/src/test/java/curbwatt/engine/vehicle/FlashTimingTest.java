package curbwatt.engine.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.load.DropOut;
import curbwatt.engine.load.FlashClock;
import curbwatt.engine.load.Inrush;
import curbwatt.engine.load.Load;
import curbwatt.engine.load.LoadPattern;
import curbwatt.engine.load.OnInterval;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class FlashTimingTest {

    private static final FlashClock CLOCK = new FlashClock("flasher", 800);

    private static Load load(String name, double ratedA, int heads, LoadPattern pattern) {
        return new Load(name, ratedA, 12.8, 0, 0.1, DropOut.never(), pattern, Set.of(), Inrush.none(), heads);
    }

    private static Load head(String name, double ratedA, int heads, double phaseMs, double fromMs, double toMs) {
        return load(
                name, ratedA, heads, new LoadPattern.Flashing(CLOCK, List.of(new OnInterval(fromMs, toMs)), phaseMs));
    }

    private static Vehicle vehicle(Load... loads) {
        return Bench.usual().vehicle().withCircuits(List.of(new Circuit("equipment", 0.01, List.of(loads))));
    }

    private static double phaseMs(Load load) {
        return ((LoadPattern.Flashing) load.pattern()).phaseMs();
    }

    private static Stream<Double> phasesMs(Vehicle vehicle) {
        return vehicle.loads().map(FlashTimingTest::phaseMs);
    }

    @Test
    void togetherEveryFirstFlashBeginsWithTheClock() {
        Vehicle spread = vehicle(head("a", 2, 1, 400, 0, 100), head("b", 2, 1, 0, 300, 400));
        assertThat(phasesMs(FlashTiming.TOGETHER.of(spread))).containsExactly(0.0, 500.0);
    }

    @Test
    void interleavedAQuarterLitMakesFourGroupsAndHalfLitTwo() {
        Vehicle quarter = vehicle(
                head("a", 2, 1, 0, 0, 200),
                head("b", 2, 1, 0, 0, 200),
                head("c", 2, 1, 0, 0, 200),
                head("d", 2, 1, 0, 0, 200),
                head("e", 2, 1, 0, 0, 200));
        assertThat(phasesMs(FlashTiming.INTERLEAVED.of(quarter))).containsExactly(0.0, 200.0, 400.0, 600.0, 0.0);
        Vehicle half = vehicle(head("a", 2, 1, 0, 0, 400), head("b", 2, 1, 0, 0, 400), head("c", 2, 1, 0, 0, 500));
        assertThat(phasesMs(FlashTiming.INTERLEAVED.of(half))).containsExactly(0.0, 400.0, 0.0);
    }

    @Test
    void theLargestLoadIsDealtFirst() {
        Vehicle mixed = vehicle(head("a", 1, 1, 0, 0, 400), head("b", 1, 1, 0, 0, 400), head("c", 2, 1, 0, 0, 400));
        assertThat(phasesMs(FlashTiming.INTERLEAVED.of(mixed))).containsExactly(400.0, 400.0, 0.0);
    }

    @Test
    void aLoadOfManyHeadsIsPartedAndDrawsAsMuchAsBefore() {
        Vehicle bar = vehicle(head("bar", 9, 3, 0, 0, 400));
        List<Load> parts = FlashTiming.INTERLEAVED.of(bar).loads().toList();
        assertThat(parts).extracting(Load::name).containsExactly("bar, group 1", "bar, group 2");
        assertThat(parts).extracting(Load::heads).containsExactly(2, 1);
        assertThat(parts).extracting(Load::ratedCurrentA).containsExactly(6.0, 3.0);
        assertThat(parts).extracting(FlashTimingTest::phaseMs).containsExactly(0.0, 400.0);
        assertThat(parts.stream().mapToDouble(Load::standbyCurrentA).sum()).isCloseTo(0.1, within(1e-12));
    }

    @Test
    void neitherTimingChangesTheMeanCurrent() {
        Vehicle mixed = vehicle(
                head("a", 5, 4, 100, 50, 300),
                head("b", 1, 1, 0, 0, 100),
                load("c", 3, 1, new LoadPattern.Continuous()));
        double meanA = meanA(mixed);
        assertThat(meanA(FlashTiming.TOGETHER.of(mixed))).isCloseTo(meanA, within(1e-12));
        assertThat(meanA(FlashTiming.INTERLEAVED.of(mixed))).isCloseTo(meanA, within(1e-12));
    }

    private static double meanA(Vehicle vehicle) {
        return vehicle.loads().mapToDouble(load -> load.meanCurrentA(12.8)).sum();
    }

    @Test
    void whatSharesNoClockStaysAsItIs() {
        FlashClock own = new FlashClock("own", 700);
        Vehicle alone = vehicle(
                load("head", 3, 1, new LoadPattern.Flashing(own, List.of(new OnInterval(100, 200)), 300)),
                load("radio", 3, 1, new LoadPattern.Duty(3, 60, 10, 0)));
        assertThat(FlashTiming.TOGETHER.of(alone)).isEqualTo(alone);
        assertThat(FlashTiming.INTERLEAVED.of(alone)).isEqualTo(alone);
        assertThat(FlashTiming.clocks(alone)).isEmpty();
    }

    @Test
    void aPairInTurnIsInterleavedAlready() {
        Vehicle pair = vehicle(head("left", 2, 1, 0, 0, 300), head("right", 2, 1, 400, 0, 300));
        assertThat(FlashTiming.INTERLEAVED.of(pair)).isEqualTo(pair);
    }
}
