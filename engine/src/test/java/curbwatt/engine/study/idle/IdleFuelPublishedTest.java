package curbwatt.engine.study.idle;

import curbwatt.engine.check.Published;
import curbwatt.engine.check.Published.Obtained;
import curbwatt.engine.load.Loads;
import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.powertrain.EngineSpeed;
import curbwatt.engine.powertrain.Fuel;
import curbwatt.engine.powertrain.FuelRate;
import curbwatt.engine.powertrain.PublishedIdle;
import curbwatt.engine.scene.InitialState;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.study.Question;
import curbwatt.engine.study.idle.money.Offer;
import curbwatt.engine.study.idle.money.Prices;
import curbwatt.engine.study.idle.money.Usage;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.vehicle.EngineEquipment;
import curbwatt.engine.vehicle.Vehicle;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The study's sums over a scene and a year, against published figures of idling. */
class IdleFuelPublishedTest {

    private static final String TOPIC = "Idling over a year";
    private static final String DOE = "US Department of Energy, Vehicle Technologies fact #861 (gal/h, here in L/h)";
    private static final String ECO = "European Commission decision 2020/728: consumption and CO2 factors";

    private static Published published(String what, String unit, double value, Obtained obtained, String source) {
        return new Published(TOPIC, what, unit, value, 2e-3 * value, obtained, source);
    }

    /** A vehicle without alternator and load: nothing but the engine's own idling is left. */
    private static WayOutcome anHourOf(PublishedIdle vehicle) {
        Vehicle truck = IdleTruck.truck(1)
                .withCutoffs(List.of())
                .withCircuits(List.of(new Circuit("bus", 0, List.of(Loads.current("dark", 0.001, "never")))))
                .withAlternator(Optional.empty())
                .withEngine(new EngineEquipment(
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(
                                new FuelRate(vehicle.fuel(), vehicle.burn(650), FuelRate.EUROPEAN_BASELINE_FRACTION))));
        Scene hour = new Scene(
                "An hour",
                new InitialState(1, 25),
                List.of(new Phase("Idle", EngineMode.IDLING, 3600, 25, EngineSpeed.constant(650), Set.of())));
        Question question = IdleStudy.asking(new Question(Simulation.of(truck, hour), List.of()));
        return WayOutcome.of(question, new Standing(IdleWay.IDLING, IdleDevices.of(truck), Set.of()));
    }

    @ParameterizedTest
    @CsvSource({
        "LARGE_SEDAN_PETROL, 1.476",
        "MEDIUM_TRUCK_PETROL, 3.180",
        "TOW_TRUCK_DIESEL, 2.233",
        "MEDIUM_TRUCK_DIESEL, 1.666",
        "BUCKET_TRUCK_DIESEL, 3.407"
    })
    void anHourOfIdlingTakesThePublishedLitres(PublishedIdle vehicle, double litresPerH, TestReporter reporter) {
        WayOutcome hour = anHourOf(vehicle);
        published(vehicle + ", one scene of one idling hour", "L", litresPerH, Obtained.SEEN, DOE)
                .check(hour.usage().fuelLitres().orElseThrow(), reporter);
        published(
                        vehicle + ", its CO2",
                        "kg",
                        litresPerH * vehicle.fuel().carbonDioxideGramsPerLitre(Fuel.CarbonSet.EUROPEAN) / 1000,
                        Obtained.DERIVED,
                        DOE + "; " + ECO)
                .check(hour.carbonKg().orElseThrow(), reporter);
    }

    /** 715 W more of electricity while idling: 0.2348 L/h of diesel, whether drawn at once or charged back later. */
    @Test
    void electricityIsPaidForWhetherTheEngineIdlesOrRestsAndChargesLater(TestReporter reporter) {
        Question question = IdleTruck.question(50);
        Vehicle strong = question.simulation().vehicle();
        Question easy = new Question(question.simulation().with(strong), question.requirements());
        Standing off = new Standing(IdleWay.ENGINE_OFF, IdleDevices.of(strong), Set.of("engine"));
        WayOutcome outcome = WayOutcome.of(easy, off);
        double owedAh = 92.0
                * (outcome.answer().result().batteries().get(0).startChargeFraction()
                        - outcome.answer().result().endChargeFraction());
        // 14.2 V set-point; the capacity of the fitted model is within a few per cent of the label's 92 Ah
        double litres = owedAh * 14.2 / 1000 * 0.220 / 0.67;
        new Published(
                        TOPIC,
                        "Fuel owed after a watch with the engine off: charge at 14.2 V, 0.220 L/kWh at 67 %",
                        "L",
                        litres,
                        0.1 * litres,
                        Obtained.DERIVED,
                        ECO)
                .check(outcome.owedLitres().orElseThrow(), reporter);
    }

    @Test
    void aDayOfIdlingCostsWhatACityReckons(TestReporter reporter) {
        double litres = 0.75 * Fuel.US_GALLON_LITRES * 4.85;
        Prices prices = new Prices("USD", 3.26 / Fuel.US_GALLON_LITRES, 0, 0, 0, 0, 10);
        Offer idling = new Offer(new Usage(OptionalDouble.of(litres), 4.85, 1), 0);
        published(
                        "0.75 gal/h, 4.85 h a day, 3.26 a gallon: one day",
                        "",
                        11.86,
                        Obtained.SEEN,
                        "a city's public account of idling patrol cars")
                .check(idling.yearMoney(prices, 1), reporter);
    }

    @Test
    void aFleetsYearOfShortIdlingCostsWhatIsPublished(TestReporter reporter) {
        double litres = 0.5 * Fuel.US_GALLON_LITRES / 6;
        Prices prices = new Prices("USD", 3.50 / Fuel.US_GALLON_LITRES, 0, 0, 0, 0, 10);
        Offer idling = new Offer(new Usage(OptionalDouble.of(litres), 1.0 / 6, 0), 0);
        published(
                        "10 trucks, ten times 10 min a day on 259 days, 0.5 gal/h, 3.50 a gallon: one year",
                        "",
                        7550,
                        Obtained.SEEN,
                        "a public fleet example; the number of days follows from its sum")
                .check(10 * idling.yearMoney(prices, 10 * 259), reporter);
    }
}
