package curbwatt.engine.study.recharge;

import curbwatt.engine.check.Published;
import curbwatt.engine.check.Published.Obtained;
import curbwatt.engine.study.RunPool;
import curbwatt.engine.study.StudyWatch;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;

/** Recharging against closed forms: as long as the battery takes all that is to spare, charge comes back in a line. */
class RechargePublishedTest {

    private static final String TOPIC = "Recharging";
    private static final String SOURCE = "charge balance: time = missing charge / (alternator current - load current)";

    /**
     * From half empty, 12 A to spare: far from what the battery could take, and from gassing. The start of the engine takes
     * 0.1 Ah that the closed form leaves out.
     */
    private static RechargeResult halfEmpty() {
        return new RechargeStudy(
                        RechargeTruck.question(0.6, 8, 20, 20),
                        Optional.empty(),
                        RechargeTruck.plan(OptionalDouble.of(0.55), 2 * 3600))
                .run(new RunPool(2), StudyWatch.none());
    }

    @Test
    void whatIsToSpareGivesItBackInAStraightLine(TestReporter reporter) {
        RechargeResult result = halfEmpty();
        double allS = result.missingAh() / (20 - 8) * 3600;
        for (double share : new double[] {0.8, 0.9, 1}) {
            published(
                            "20 A from the alternator, 8 A to the loads: " + Math.round(100 * share) + " % back",
                            "s",
                            share * allS,
                            0.015)
                    .check(result.driving().timeS(share).orElseThrow(), reporter);
        }
    }

    /** The output rises straight from 10 A at 500 to 40 A at 2000 turns: 10 A + 0.02 A a turn. */
    @Test
    void theLowestIdleCarriesLoadsAndCharge(TestReporter reporter) {
        RechargeResult result = new RechargeStudy(
                        RechargeTruck.question(0.6, 15, 10, 40),
                        Optional.empty(),
                        RechargeTruck.plan(OptionalDouble.of(0.55), 2 * 3600))
                .run(new RunPool(2), StudyWatch.none());
        // within two hours half of the missing charge has to come in each
        double neededA = 15 + result.missingAh() / 2;
        published(
                        "lowest idle that gives it back within two hours, found to 10 /min",
                        "/min",
                        500 + (neededA - 10) / 0.02,
                        0.02)
                .check(result.lowestInTimeRpm().orElseThrow(), reporter);
        double dayA = 15 + result.missingAh() / 24;
        published(
                        "lowest idle that gives it back within a day, found to 10 /min",
                        "/min",
                        500 + (dayA - 10) / 0.02,
                        0.03)
                .check(result.lowestEverRpm().orElseThrow(), reporter);
    }

    private static Published published(String what, String unit, double value, double toleranceFraction) {
        return new Published(TOPIC, what, unit, value, toleranceFraction * value, Obtained.DERIVED, SOURCE);
    }
}
