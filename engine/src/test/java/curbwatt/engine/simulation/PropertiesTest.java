package curbwatt.engine.simulation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.BatteryCondition;
import curbwatt.engine.battery.Chemistry;
import curbwatt.engine.control.RecloseRule;
import curbwatt.engine.event.Event;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.load.Load;
import curbwatt.engine.result.ChargeLedger;
import curbwatt.engine.result.EnergyLedger;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.simulation.record.Recorder;
import curbwatt.engine.vehicle.BatteryInstallation;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.vehicle.Vehicle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold for any vehicle, over vehicles and scenes drawn at random from a seed. */
class PropertiesTest {

    private static final int VEHICLES = 24;
    private static final double TRIP_V = 11.8;
    private static final double DELAY_S = 30;

    static LongStream seeds() {
        return LongStream.rangeClosed(1, VEHICLES);
    }

    /** A vehicle and the numbers that the properties vary. */
    private record Draw(long seed, double healthFraction, double extraA, double tripV) {

        Draw withHealth(double fraction) {
            return new Draw(seed, fraction, extraA, tripV);
        }

        Draw withExtra(double currentA) {
            return new Draw(seed, healthFraction, currentA, tripV);
        }

        Draw withTrip(double levelV) {
            return new Draw(seed, healthFraction, extraA, levelV);
        }

        Vehicle vehicle(boolean withAlternator) {
            Random random = new Random(seed);
            Chemistry chemistry = random.nextBoolean() ? Chemistry.FLOODED : Chemistry.AGM;
            double c20Ah = 50 + random.nextInt(60);
            Battery fitted = Vehicles.battery(
                    chemistry,
                    c20Ah,
                    0.83 * Math.pow(c20Ah, 1.17) * (0.9 + 0.2 * random.nextDouble()),
                    c20Ah * (7 + 3 * random.nextDouble()));
            Battery battery = new Battery(fitted.parameters(), new BatteryCondition(healthFraction, 1.3, 0.03));
            List<Circuit> circuits = new ArrayList<>();
            String[] names = {"lamps", "radios", "tools"};
            for (String name : names) {
                List<Load> loads = new ArrayList<>();
                for (int i = 0; i < 1 + random.nextInt(3); i++) {
                    loads.add(randomLoad(random, name + " " + i));
                }
                circuits.add(new Circuit(name, random.nextInt(3) * 0.01, loads));
            }
            circuits.add(new Circuit("extra", 0, List.of(Vehicles.steady("extra", extraA, 0))));
            return new Vehicle(
                    "truck " + seed,
                    new BatteryInstallation("battery", battery, 18000),
                    withAlternator
                            ? Optional.of(Vehicles.alternator(40 + 30 * random.nextDouble(), 130, 2.7))
                            : Optional.empty(),
                    circuits,
                    List.of(Vehicles.cutoff(
                            tripV, DELAY_S, random.nextInt(3), new RecloseRule.ByHand(), "lamps", "radios", "extra")),
                    Vehicles.starting());
        }

        private static Load randomLoad(Random random, String name) {
            double[] exponents = {-1, 0, 0.55, 1};
            double exponent = exponents[random.nextInt(exponents.length)];
            double ratedA = 0.5 + 4 * random.nextDouble();
            return random.nextInt(3) == 0
                    ? Vehicles.flashing(
                            name, 2 * ratedA, exponent, 400 + 100 * random.nextInt(5), 200, 100 * random.nextInt(4))
                    : Vehicles.steady(name, ratedA, exponent);
        }
    }

    private static Draw draw(long seed) {
        return new Draw(seed, 0.9, 2, TRIP_V);
    }

    private static Scene mixedScene() {
        return Vehicles.scene(
                0.8, 10, Vehicles.idling(600, 5, 700), Vehicles.off(1200, -5), Vehicles.driving(600, 20, 1500));
    }

    private static double tripS(Draw draw) {
        Scene scene = Vehicles.scene(0.65, 20, Vehicles.off(3 * 3600, 20));
        RunResult run = Simulation.of(draw.vehicle(false), scene).run(Recorder.none());
        return run.events().stream()
                .filter(event -> event.kind() == EventKind.CUTOFF_TRIPPED)
                .mapToDouble(Event::timeS)
                .findFirst()
                .orElse(Double.POSITIVE_INFINITY);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void ledgersClose(long seed) {
        RunResult run = Simulation.of(draw(seed).vehicle(true), mixedScene()).run(Recorder.none());
        ChargeLedger charge = run.charge();
        double scaleAh = Math.abs(charge.removedAh()) + charge.alternatorAh() + charge.loadsAh();
        assertThat(charge.batteryRemainderAh()).isCloseTo(0, within(1e-9 * scaleAh));
        assertThat(charge.nodeRemainderAh()).isCloseTo(0, within(1e-9 * scaleAh));
        EnergyLedger energy = run.energy();
        assertThat(energy.remainderWh()).isCloseTo(0, within(1e-6 * (energy.alternatorWh() + energy.loadsWh())));
        assertThat(energy.batteryLossWh()).isPositive();
        assertThat(energy.feedLossWh()).isNotNegative();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void currentsBalanceAtEveryStep(long seed) {
        double[] worstA = {0};
        Simulation.of(draw(seed).vehicle(true), mixedScene())
                .run(step -> worstA[0] = Math.max(worstA[0], step.residualA()));
        assertThat(worstA[0]).isLessThan(1e-9);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void chargeNeverExceedsFull(long seed) {
        double[] most = {0};
        Simulation.of(draw(seed).vehicle(true), Vehicles.scene(0.97, 40, Vehicles.idling(3600, 40, 2500)))
                .run(step -> most[0] = Math.max(most[0], step.chargeEndFraction()));
        assertThat(most[0]).isBetween(0.97, 1.0);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void moreLoadNeverTripsLater(long seed) {
        assertThat(tripS(draw(seed).withExtra(4))).isLessThanOrEqualTo(tripS(draw(seed)));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void lessCapacityNeverTripsLater(long seed) {
        assertThat(tripS(draw(seed).withHealth(0.75))).isLessThanOrEqualTo(tripS(draw(seed)));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aHigherLevelNeverTripsLater(long seed) {
        assertThat(tripS(draw(seed).withTrip(TRIP_V + 0.1))).isLessThanOrEqualTo(tripS(draw(seed)));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theSameRunGivesTheSameResult(long seed) {
        Simulation simulation = Simulation.of(draw(seed).vehicle(true), mixedScene());
        assertThat(simulation.run(Recorder.none())).isEqualTo(simulation.run(Recorder.none()));
    }

    /** The stated tolerance of the steps: a tenth of a second in a trip time. */
    @ParameterizedTest
    @MethodSource("seeds")
    void halvingTheStepsMovesNoTrip(long seed) {
        Scene scene = Vehicles.scene(0.65, 20, Vehicles.off(5400, 20));
        Simulation simulation = Simulation.of(draw(seed).vehicle(false), scene);
        RunResult usual = simulation.run(Recorder.none());
        RunResult halved = simulation.run(Recorder.none(), new StepControl(1e-3, 1e-6, 15));
        assertThat(halved.events()).hasSameSizeAs(usual.events());
        for (int i = 0; i < usual.events().size(); i++) {
            Event expected = usual.events().get(i);
            assertThat(halved.events().get(i).kind()).isEqualTo(expected.kind());
            assertThat(halved.events().get(i).timeS()).isCloseTo(expected.timeS(), within(0.1));
        }
        assertThat(halved.endChargeFraction()).isCloseTo(usual.endChargeFraction(), within(1e-6));
    }
}
