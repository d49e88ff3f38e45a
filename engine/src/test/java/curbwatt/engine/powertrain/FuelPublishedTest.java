package curbwatt.engine.powertrain;

import curbwatt.engine.check.Published;
import curbwatt.engine.check.Published.Obtained;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FuelPublishedTest {
    private static final String TOPIC = "Idle fuel";
    private static final String ECO =
            "European Commission decision 2020/728: consumption and CO2 factors; 67 % baseline";

    @ParameterizedTest
    @CsvSource({"PETROL, 0.3940, 918.1", "PETROL_TURBO, 0.4179, 973.7", "DIESEL, 0.3284, 866.9"})
    void oneElectricalKilowattHour(Fuel fuel, double litres, double grams, TestReporter reporter) {
        double ours = rate(fuel).electricalLitresPerH(1000);
        published(fuel + ", one electrical kWh at 67 %", "L", litres, 1e-3 * litres, ECO)
                .check(ours, reporter);
        published(fuel + ", one electrical kWh at 67 %, CO2", "g", grams, 1e-3 * grams, ECO)
                .check(rate(fuel).carbonDioxideGrams(ours, Fuel.CarbonSet.EUROPEAN), reporter);
    }

    @ParameterizedTest
    @CsvSource({"PETROL, 0.2817", "PETROL_TURBO, 0.2988", "DIESEL, 0.2348"})
    void fiftyAmperes(Fuel fuel, double litresPerH, TestReporter reporter) {
        published(fuel + ", 50 A at 14.3 V", "L/h", litresPerH, 1e-3 * litresPerH, ECO)
                .check(rate(fuel).electricalLitresPerH(50 * 14.3), reporter);
    }

    @ParameterizedTest
    @CsvSource({
        "COMPACT_SEDAN_PETROL, 0.606",
        "LARGE_SEDAN_PETROL, 1.476",
        "COMPACT_SEDAN_DIESEL, 0.644",
        "MEDIUM_TRUCK_PETROL, 3.180",
        "DELIVERY_TRUCK_DIESEL, 3.180",
        "TOW_TRUCK_DIESEL, 2.233",
        "MEDIUM_TRUCK_DIESEL, 1.666",
        "TRANSIT_BUS_DIESEL, 3.672",
        "COMBINATION_TRUCK_DIESEL, 1.855",
        "BUCKET_TRUCK_DIESEL, 3.407",
        "TRACTOR_SEMITRAILER_DIESEL, 2.423"
    })
    void idlingWithoutLoad(PublishedIdle vehicle, double litresPerH, TestReporter reporter) {
        FuelRate rate = new FuelRate(vehicle.fuel(), vehicle.burn(650), FuelRate.EUROPEAN_BASELINE_FRACTION);
        published(
                        vehicle + ", idle, no accessory load",
                        "L/h",
                        litresPerH,
                        0.0006,
                        "US Department of Energy, Vehicle Technologies fact #861 (gal/h, here in L/h)")
                .check(rate.litresPerH(650, 0), reporter);
    }

    @Test
    void restartAgainstIdling(TestReporter reporter) {
        FuelRate rate = new FuelRate(Fuel.PETROL, IdleBurn.through(800, 0.174e-3 * 3600), 0.67);
        published("1.5 L car, 0.174 mL/s idle, 1.2 mL per restart", "s", 6.9, 0.05, "a public measurement on one car")
                .check(rate.breakEvenS(800, 0, FuelRate.RESTART_LITRES), reporter);
    }

    @Test
    void fiftyAmperesAddAFifthToALargeSedan(TestReporter reporter) {
        double idle = PublishedIdle.LARGE_SEDAN_PETROL.litresPerH();
        published("50 A on a large sedan's idle, share added", "%", 19, 0.5, "fact #861 and decision 2020/728")
                .check(100 * rate(Fuel.PETROL).electricalLitresPerH(715) / idle, reporter);
    }

    @ParameterizedTest
    @CsvSource({"PETROL, 8820, 8887", "DIESEL, 9993, 10180"})
    void carbonSetsAreHeldApart(
            Fuel fuel, double europeanGramsPerGal, double americanGramsPerGal, TestReporter reporter) {
        published(fuel + ", European set, per US gallon", "g", europeanGramsPerGal, 1, ECO)
                .check(fuel.carbonDioxideGramsPerLitre(Fuel.CarbonSet.EUROPEAN) * Fuel.US_GALLON_LITRES, reporter);
        published(fuel + ", American set, per US gallon", "g", americanGramsPerGal, 1e-6, "US EPA emission figures")
                .check(fuel.carbonDioxideGramsPerLitre(Fuel.CarbonSet.AMERICAN) * Fuel.US_GALLON_LITRES, reporter);
    }

    private static FuelRate rate(Fuel fuel) {
        return new FuelRate(fuel, IdleBurn.through(700, 1), FuelRate.EUROPEAN_BASELINE_FRACTION);
    }

    private static Published published(String what, String unit, double value, double tolerance, String source) {
        return new Published(TOPIC, what, unit, value, tolerance, Obtained.DERIVED, source);
    }
}
