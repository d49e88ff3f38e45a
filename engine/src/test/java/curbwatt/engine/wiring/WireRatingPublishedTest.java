package curbwatt.engine.wiring;

import curbwatt.engine.check.Published;
import curbwatt.engine.check.Published.Obtained;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ratings and sizes of wire. */
class WireRatingPublishedTest {
    private static final String BOATS = "ABYC E-11 and 33 CFR 183.425, 105 °C insulation";
    private static final String IEC_60228 = "IEC 60228, class 5, plain copper, largest resistance at 20 °C";

    private static double limitA(int gauge, WireSpace space) {
        return new Ampacity().limitA(new WireGauge(gauge).areaMm2(), space, 1);
    }

    @ParameterizedTest
    @CsvSource({
        "18, 20, 17",
        "16, 25, 21",
        "14, 35, 30",
        "12, 45, 38",
        "10, 60, 51",
        "8, 80, 68",
        "6, 120, 102",
        "4, 160, 136",
        "3, 180, 153",
        "2, 210, 178",
        "1, 245, 208",
        "0, 285, 242",
        "-1, 330, 280",
        "-2, 385, 327",
        "-3, 445, 378"
    })
    void rating(int gauge, double outsideA, double insideA, TestReporter reporter) {
        String wire = new WireGauge(gauge).label();
        rating(wire + " outside the engine space", outsideA, 1e-9, BOATS)
                .check(limitA(gauge, WireSpace.OUTSIDE_ENGINE_SPACE), reporter);
        rating(wire + " inside the engine space", insideA, 0.51, BOATS)
                .check(limitA(gauge, WireSpace.INSIDE_ENGINE_SPACE), reporter);
    }

    /** Written for harness and open frame together: a truck builder is more cautious with the thicker wires. */
    @ParameterizedTest
    @CsvSource({"20, 14, 0", "18, 18, 2", "16, 24, 1", "14, 34, 1", "12, 42, 3", "10, 58, 2", "8, 80, 0", "6, 110, 10"})
    void ratingOfATruckBuilder(int gauge, double limitA, double toleranceA, TestReporter reporter) {
        rating(
                        new WireGauge(gauge).label() + " outside the engine space",
                        limitA,
                        toleranceA + 1e-9,
                        "a truck builder's public limits, XLPE")
                .check(limitA(gauge, WireSpace.OUTSIDE_ENGINE_SPACE), reporter);
    }

    @ParameterizedTest
    @CsvSource({"1, 1", "3, 0.70", "4, 0.60", "6, 0.60", "7, 0.50", "24, 0.50"})
    void bundle(int conductors, double factor, TestReporter reporter) {
        new Published("Wire rating", conductors + " conductors in a bundle", "1", factor, 0, Obtained.SEEN, BOATS)
                .check(Ampacity.bundleFactor(conductors), reporter);
    }

    /** A wire of the nominal area would have 9 to 14 % less: metric sizes are names. */
    @ParameterizedTest
    @CsvSource({
        "0.5, 39.0",
        "0.75, 26.0",
        "1, 19.5",
        "1.5, 13.3",
        "2.5, 7.98",
        "4, 4.95",
        "6, 3.30",
        "10, 1.91",
        "16, 1.21",
        "25, 0.780",
        "35, 0.554",
        "50, 0.386",
        "70, 0.272",
        "95, 0.206",
        "120, 0.161"
    })
    void metricSize(double nominalMm2, double milliohmPerM, TestReporter reporter) {
        WireSize size = new MetricSize(nominalMm2);
        metre(size.label() + ", 1 m", milliohmPerM, 1e-12, IEC_60228)
                .check(1e3 * metreOhm(size.areaMm2(), WireMaterial.COPPER), reporter);
        metre("solid copper of " + size.label() + ", 1 m", milliohmPerM, 0.14 * milliohmPerM, IEC_60228)
                .check(1e3 * metreOhm(nominalMm2, WireMaterial.COPPER), reporter);
    }

    @ParameterizedTest
    @CsvSource({"10, 3.08", "16, 1.91", "25, 1.20", "35, 0.868", "50, 0.641", "70, 0.443", "95, 0.320", "120, 0.253"})
    void aluminium(double nominalMm2, double milliohmPerM, TestReporter reporter) {
        metre(
                        "solid aluminium of " + nominalMm2 + " mm², 1 m",
                        milliohmPerM,
                        0.13 * milliohmPerM,
                        "IEC 60228, class 2, aluminium, largest resistance at 20 °C")
                .check(1e3 * metreOhm(nominalMm2, WireMaterial.ALUMINIUM), reporter);
    }

    @ParameterizedTest
    @CsvSource({
        "18, 0.946",
        "16, 0.904",
        "14, 0.901",
        "12, 0.893",
        "10, 0.900",
        "8, 0.897",
        "6, 0.935",
        "4, 0.895",
        "2, 0.941",
        "1, 0.929",
        "0, 0.938",
        "-1, 0.940",
        "-3, 0.971"
    })
    void vehicleCable(int gauge, double ratio, TestReporter reporter) {
        new Published(
                        "Wire",
                        "least area of vehicle cable over that of the gauge, " + new VehicleCable(gauge).label(),
                        "1",
                        ratio,
                        0.0006,
                        Obtained.DERIVED,
                        "SAE J1127 and J1128 circular mils, ASTM B258 diameters")
                .check(new VehicleCable(gauge).areaMm2() / new WireGauge(gauge).areaMm2(), reporter);
    }

    /** Largest resistance of plain stranded wire; ours is a solid conductor's of the nominal gauge. */
    @ParameterizedTest
    @CsvSource({"20, 34.6", "18, 21.8", "16, 13.7", "14, 8.62", "12, 5.43", "10, 3.409", "8, 2.144"})
    void strandedGauge(int gauge, double milliohmPerM, TestReporter reporter) {
        metre("AWG " + gauge + ", 1 m, ours solid", milliohmPerM, 0.042 * milliohmPerM, "UL 1581, stranded, largest")
                .check(1e3 * metreOhm(new WireGauge(gauge).areaMm2(), WireMaterial.COPPER), reporter);
    }

    private static double metreOhm(double areaMm2, WireMaterial material) {
        return new WireRun(areaMm2, 1, new WireRun.Return.Chassis(0), material).loopOhm(20);
    }

    private static Published metre(String what, double milliohmPerM, double tolerance, String source) {
        return new Published("Wire", what, "mΩ", milliohmPerM, tolerance, Obtained.SEEN, source);
    }

    private static Published rating(String what, double limitA, double toleranceA, String source) {
        return new Published("Wire rating", what, "A", limitA, toleranceA, Obtained.SEEN, source);
    }
}
