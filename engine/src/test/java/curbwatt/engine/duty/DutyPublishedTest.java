package curbwatt.engine.duty;

import curbwatt.engine.check.Published;
import curbwatt.engine.check.Published.Obtained;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DutyPublishedTest {
    private static final String TOPIC = "Duty tests";
    private static final Set<String> CONTINUOUS = Set.of("continuous");

    @ParameterizedTest
    @CsvSource({"100, 125", "130, 162.5", "160, 200", "200, 250"})
    void largestReserveLoad(double reserveMin, double largestA, TestReporter reporter) {
        ReserveTest test = new ReserveTest(TestTruck.drawing(10), CONTINUOUS, reserveMin, 25, 700);
        new Published(
                        TOPIC,
                        "mean load that uses half of " + reserveMin + " min reserve in 10 min",
                        "A",
                        largestA,
                        1e-9,
                        Obtained.DERIVED,
                        "NFPA 1901 reserve capacity test, as quoted in a public production specification")
                .check(test.criterion().limit() * 6, reporter);
    }

    @Test
    void alarmLimits(TestReporter reporter) {
        LowVoltageAlarmTest test = new LowVoltageAlarmTest(TestTruck.drawing(10), CONTINUOUS, 3600, 25, 700);
        String source = "NFPA 1901 low-voltage alarm test, as quoted in a public purchase specification";
        new Published(TOPIC, "longest time to the alarm", "s", 140, 0, Obtained.SEEN, source)
                .check(test.criterion().limit(), reporter);
        new Published(TOPIC, "voltage from which it counts", "V", 11.70, 0, Obtained.SEEN, source)
                .check(LowVoltageAlarmTest.REACHED_V, reporter);
    }

    @Test
    void underHoodTemperature(TestReporter reporter) {
        IdleBalanceTest test =
                new IdleBalanceTest(TestTruck.drawing(10), IdleBalanceTest.Rule.AMBULANCE, CONTINUOUS, 700);
        new Published(
                        TOPIC,
                        "200 °F under the hood",
                        "°C",
                        200 / 1.8 - 32 / 1.8,
                        0.5,
                        Obtained.SEEN,
                        "Federal specification KKK-A-1822E, page 33")
                .check(test.scene().phases().get(1).air().highestC(), reporter);
        new Published(
                        TOPIC,
                        "medical load within the ambulance's maximum load",
                        "A",
                        20,
                        0,
                        Obtained.SEEN,
                        "Federal specification KKK-A-1822E, page 33")
                .check(test.addedA(), reporter);
    }
}
