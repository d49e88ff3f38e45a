package curbwatt.engine.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.check.Published;
import curbwatt.engine.check.Published.Obtained;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One diffusion mode is the kinetic battery model. */
class KineticModelPublishedTest {
    private static final String TOPIC = "Kinetic battery model";
    private static final String PULSED =
            "Jongerden and Haverkort, IET Software 3 (2009) 445, cell of Rao et al., IEEE Computer 36 (2003) no. 12";
    private static final String SCHEDULED = "Jongerden, Haverkort, Bohnenkamp and Katoen, DSN 2009";
    private static final String NATIONAL_LAB =
            "DiOrio et al., NREL/TP-6A20-64641 (2015), test fixture of the laboratory's open energy model";
    private static final double C = 0.475110;

    /** The published 4.5e-5 /s is k; k' = k/(c (1 − c)). */
    private static Cell pulsedCell() {
        return Cell.kinetic(0.625, 4.5e-5 / (0.625 * 0.375) * 3600, 2);
    }

    private static Cell scheduledCell(double ampereMinutes) {
        return Cell.kinetic(0.166, 0.122 * 60, ampereMinutes / 60);
    }

    private static Cell leadAcid() {
        return Cell.kinetic(C, 0.677, 108.15933);
    }

    @ParameterizedTest
    @CsvSource({"0, 91, 0.5", "1, 203, 0.5", "0.2, 203, 0.5"})
    void pulsedLoad(double frequencyHz, double publishedMin, double toleranceMin, TestReporter reporter) {
        IntFunction<Cell.Segment> load =
                frequencyHz == 0 ? Cell.profile("960@0") : Cell.repeating(0.5 / frequencyHz, 0.96, 0);
        new Published(
                        TOPIC,
                        "0.96 A, on and off at " + frequencyHz + " Hz (0: continuous)",
                        "min",
                        publishedMin,
                        toleranceMin,
                        Obtained.MEMORY,
                        PULSED)
                .check(pulsedCell().lifeS(load) / 60, reporter);
    }

    @ParameterizedTest
    @CsvSource({
        "0.1, true, 202.886",
        "0.01, true, 202.260",
        "0.001, true, 202.004",
        "0.0001, true, 187.529",
        "1, false, 202.947",
        "0.001, false, 210.337",
        "0.0001, false, 270.862"
    })
    void pulsedLoadInClosedForm(double frequencyHz, boolean onFirst, double lifeMin, TestReporter reporter) {
        IntFunction<Cell.Segment> load =
                onFirst ? Cell.repeating(0.5 / frequencyHz, 0.96, 0) : Cell.repeating(0.5 / frequencyHz, 0, 0.96);
        new Published(
                        TOPIC,
                        "0.96 A at " + frequencyHz + " Hz, " + (onFirst ? "on" : "off") + " first",
                        "min",
                        lifeMin,
                        0.002,
                        Obtained.DERIVED,
                        "closed form with the parameters of " + PULSED)
                .check(pulsedCell().lifeS(load) / 60, reporter);
    }

    @ParameterizedTest
    @CsvSource({
        "5.5, CL 250, 60, 0.25, 0.25, 4.53",
        "5.5, CL 500, 60, 0.5, 0.5, 2.02",
        "5.5, CL alt, 60, 0.5, 0.25, 2.58",
        "11, CL 250, 60, 0.25, 0.25, 12.16",
        "11, CL 500, 60, 0.5, 0.5, 4.53",
        "11, CL alt, 60, 0.5, 0.25, 6.45",
        "5.5, ILs 250, 120, 0.25, 0.25, 10.80",
        "5.5, ILs 500, 120, 0.5, 0.5, 4.30",
        "5.5, ILs alt, 120, 0.5, 0.25, 4.80",
        "11, ILs 250, 120, 0.25, 0.25, 44.78",
        "11, ILs 500, 120, 0.5, 0.5, 10.80",
        "11, ILs alt, 120, 0.5, 0.25, 16.93",
        "5.5, ILl 250, 180, 0.25, 0.25, 21.86",
        "5.5, ILl 500, 180, 0.5, 0.5, 6.53",
        "11, ILl 250, 180, 0.25, 0.25, 84.90",
        "11, ILl 500, 180, 0.5, 0.5, 21.86"
    })
    void scheduledLoads(
            double capacityAMin,
            String name,
            double periodS,
            double firstA,
            double secondA,
            double lifeMin,
            TestReporter reporter) {
        int idle = (int) (periodS / 60) - 1;
        double[] currents = new double[2 * (1 + idle)];
        currents[0] = firstA;
        currents[1 + idle] = secondA;
        new Published(
                        TOPIC,
                        name + ", " + capacityAMin + " A·min cell",
                        "min",
                        lifeMin,
                        0.006,
                        Obtained.MEMORY,
                        SCHEDULED)
                .check(scheduledCell(capacityAMin).lifeS(Cell.repeating(60, currents)) / 60, reporter);
    }

    @Test
    void twiceTheCellWithTwiceTheLoadLivesAsLong() {
        assertThat(scheduledCell(11).lifeS(Cell.repeating(60, 0.5, 0)))
                .isCloseTo(scheduledCell(5.5).lifeS(Cell.repeating(60, 0.25, 0)), within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({
        "2.5, 41.632",
        "5, 20.000",
        "9.3, 10.000",
        "10, 9.1873",
        "20, 3.8931",
        "25, 2.9205",
        "30, 2.3141",
        "50, 1.2374",
        "60, 1.0000",
        "100, 0.5638"
    })
    void leadAcidLives(double currentA, double lifeH, TestReporter reporter) {
        boolean given = currentA == 5 || currentA == 9.3 || currentA == 60;
        new Published(
                        TOPIC,
                        "lead-acid battery, " + currentA + " A to empty",
                        "h",
                        lifeH,
                        0.0006,
                        given ? Obtained.RECALCULATED : Obtained.DERIVED,
                        NATIONAL_LAB)
                .check(leadAcid().lifeS(i -> new Cell.Segment(currentA, 1e9)) / 3600, reporter);
    }

    @Test
    void leadAcidStepChain(TestReporter reporter) {
        Cell cell = leadAcid().atTotalAh(108.15933 / 2);
        check("available charge at half charge", "Ah", 25.6938, cell.availableAh(C), reporter);
        for (double[] step : new double[][] {{1.5, 52.580}, {3, 49.580}, {490, 22.927}, {490, 16.671}}) {
            cell.draw(Math.min(step[0], cell.mostA(3600)), 3600);
            check("charge after one hour at up to " + step[0] + " A", "Ah", step[1], cell.totalAh(), reporter);
        }
    }

    @Test
    void leadAcidChargesAsItDischarges(TestReporter reporter) {
        Cell cell = leadAcid().atTotalAh(108.15933 / 2);
        check("largest current for one hour from half charge", "A", 30.000, cell.mostA(3600), reporter);
        cell.draw(30, 3600);
        check("charge after 30 A for one hour", "Ah", 24.07, cell.totalAh(), reporter);
        cell.draw(-30, 3600);
        check("charge after one hour more at 30 A of charging", "Ah", 54.07, cell.totalAh(), reporter);
    }

    @Test
    void leadAcidRecovers(TestReporter reporter) {
        Cell cell = leadAcid();
        cell.draw(60, 1800);
        check("available charge after 60 A for half an hour", "Ah", 23.776, cell.availableAh(C), reporter);
        cell.draw(0, 1800);
        check("available charge after half an hour's rest", "Ah", 27.612, cell.availableAh(C), reporter);
    }

    @ParameterizedTest
    @CsvSource({"50, 2.9204", "20, 9.1873"})
    void fastFlashingLivesLikeItsMean(double onA, double lifeH, TestReporter reporter) {
        double flashingS = leadAcid().lifeS(Cell.repeating(0.5 / 1.5, onA, 0));
        double meanS = leadAcid().lifeS(i -> new Cell.Segment(onA / 2, 1e9));
        assertThat(flashingS).isCloseTo(meanS, within(1.0));
        new Published(
                        TOPIC,
                        onA + " A half the time at 1.5 Hz",
                        "h",
                        lifeH,
                        0.0002,
                        Obtained.DERIVED,
                        "closed form with the parameters of " + NATIONAL_LAB)
                .check(flashingS / 3600, reporter);
    }

    private static void check(String what, String unit, double value, double ours, TestReporter reporter) {
        new Published(TOPIC, "lead-acid battery, " + what, unit, value, 0.012, Obtained.RECALCULATED, NATIONAL_LAB)
                .check(ours, reporter);
    }
}
