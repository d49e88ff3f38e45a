package curbwatt.engine.simulation.clock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ReadingTest {
    @Test
    void withoutAFilterTheReadingIsTheInput() {
        Reading reading = reading(0, 10, 12, 11, 99);
        assertThat(reading.at(0)).isEqualTo(12);
        assertThat(reading.at(5)).isEqualTo(11.5);
        assertThat(reading.at(10)).isEqualTo(11);
        assertThat(reading.turnS()).isEqualTo(10);
    }

    /** F(t) = u + (F0 − u) e^(−t/τ). */
    @Test
    void stepResponse() {
        Reading reading = reading(2, 10, 12, 12, 11);
        for (double t = 0; t <= 10; t += 0.5) {
            assertThat(reading.at(t)).isCloseTo(12 - Math.exp(-t / 2), within(1e-14));
        }
        assertThat(reading.turnS()).isEqualTo(10);
    }

    /** From rest, a ramp r is followed with a lag that grows to rτ: F(t) = u0 + rt − rτ (1 − e^(−t/τ)). */
    @Test
    void rampResponse() {
        Reading reading = reading(3, 60, 12, 11.4, 12);
        for (double t = 0; t <= 60; t += 3) {
            double closed = 12 - 0.01 * t + 0.03 * (1 - Math.exp(-t / 3));
            assertThat(reading.at(t)).isCloseTo(closed, within(1e-14));
        }
        assertThat(reading.at(60) - 11.4).isCloseTo(0.03, within(1e-9));
    }

    /** A reading above a rising input first falls to it: the extremum is where it meets the input. */
    @Test
    void extremumIsWhereReadingAndInputMeet() {
        Reading reading = reading(4, 20, 11, 12, 11.5);
        double turnS = reading.turnS();
        assertThat(turnS).isBetween(0.1, 19.9);
        assertThat(reading.at(turnS)).isCloseTo(11 + 0.05 * turnS, within(1e-13));
        assertThat(reading.at(turnS - 0.01)).isGreaterThan(reading.at(turnS));
        assertThat(reading.at(turnS + 0.01)).isGreaterThan(reading.at(turnS));
    }

    @Test
    void noExtremumWhereTheReadingLagsBehindAllTheWay() {
        assertThat(reading(4, 20, 12, 11, 12.5).turnS()).isEqualTo(20);
        assertThat(reading(4, 20, 12, 11, 12).turnS()).isEqualTo(20);
    }

    @Test
    void aStepOfNoLengthReadsItsStart() {
        Reading filtered = reading(5, 0, 12, 12, 11);
        assertThat(filtered.at(0)).isEqualTo(11);
        assertThat(filtered.turnS()).isZero();
        assertThat(reading(0, 0, 12, 12, 11).at(0)).isEqualTo(12);
    }

    @Test
    void crossingOfAnExponentialIsItsLogarithm() {
        Reading reading = reading(2, 10, 11, 11, 12);
        assertThat(reading.crossingS(0, 10, 11.25)).isCloseTo(2 * Math.log(4), within(1e-9));
    }

    @Test
    void crossingOfARampIsExact() {
        assertThat(reading(0, 10, 12, 11, 12).crossingS(0, 10, 11.8)).isCloseTo(2, within(1e-13));
    }

    /** Cutting a step in two leaves the reading what it was. */
    @Test
    void twoHalvesAreOneWhole() {
        Reading whole = reading(1.5, 8, 12, 11.2, 12.3);
        double middleV = reading(1.5, 3, 12, 11.7, 12.3).at(3);
        assertThat(middleV).isCloseTo(whole.at(3), within(1e-14));
        assertThat(reading(1.5, 5, 11.7, 11.2, middleV).at(5)).isCloseTo(whole.at(8), within(1e-14));
    }

    static Reading reading(double timeConstantS, double lengthS, double fromV, double toV, double outputV) {
        Reading reading = new Reading(timeConstantS);
        reading.set(lengthS, fromV, toV, outputV);
        return reading;
    }
}
