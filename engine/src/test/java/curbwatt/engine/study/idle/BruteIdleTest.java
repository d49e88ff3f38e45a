package curbwatt.engine.study.idle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.battery.Chemistry;
import curbwatt.engine.control.AutomaticStart;
import curbwatt.engine.control.HighIdleControl;
import curbwatt.engine.control.IdleTrigger;
import curbwatt.engine.control.SensePoint;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.powertrain.EngineSpeed;
import curbwatt.engine.powertrain.FuelRate;
import curbwatt.engine.powertrain.PublishedIdle;
import curbwatt.engine.result.BatterySummary;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.scene.InitialState;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.study.Answer;
import curbwatt.engine.study.HeldBackTruck;
import curbwatt.engine.study.Question;
import curbwatt.engine.study.RunPool;
import curbwatt.engine.study.StudyWatch;
import curbwatt.engine.vehicle.EngineEquipment;
import curbwatt.engine.vehicle.Vehicle;
import curbwatt.engine.verdict.Requirement;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Vehicles that the study of standing was not made on: scenes and devices of the four ways built by hand here, their fuel
 * added up by hand, and the time of standing swept.
 */
class BruteIdleTest {

    private static final double DRIVE_S = 600;
    private static final double WATCH_S = 4 * 3600.0;
    private static final double STEP = 0.05;
    private static final FuelRate FUEL = new FuelRate(
            PublishedIdle.MEDIUM_TRUCK_DIESEL.fuel(),
            PublishedIdle.MEDIUM_TRUCK_DIESEL.burn(700),
            FuelRate.EUROPEAN_BASELINE_FRACTION);

    /** The small flooded battery stands in mild air: an alternator that charges it in the cold is followed in tiny steps. */
    static Stream<HeldBackTruck> trucks() {
        return HeldBackTruck.all().stream()
                .map(truck ->
                        truck.battery().chemistry() == Chemistry.FLOODED && truck.airC() < 0 ? truck.in(15) : truck);
    }

    private static Question asIs(HeldBackTruck truck) {
        return question(truck, EngineMode.OFF, EngineEquipment.none(), 1);
    }

    @ParameterizedTest
    @MethodSource("trucks")
    void theWayThatTakesLeastOfThoseThatServeIsRecommended(HeldBackTruck truck) {
        IdleResult result = new IdleStudy(asIs(truck), new IdlePlan(100, Set.of(), Optional.empty()))
                .run(new RunPool(2), StudyWatch.none());

        for (WayOutcome outcome : result.base().outcomes()) {
            OptionalDouble litres = litres(truck, outcome.way(), 1);
            assertThat(outcome.serves()).as("%s", outcome.way()).isEqualTo(litres.isPresent());
            litres.ifPresent(by ->
                    assertThat(outcome.usage().fuelLitres().orElseThrow()).isCloseTo(by, within(1e-3 * Math.abs(by))));
        }
        Optional<IdleWay> now = best(truck, 1);
        assertThat(result.base().bestWay()).isEqualTo(now);
        OptionalDouble shorter = changes(truck, -STEP, 0.25, now);
        OptionalDouble longer = changes(truck, STEP, 2, now);
        assertThat(flip(result, false).isPresent()).isEqualTo(shorter.isPresent());
        assertThat(flip(result, true).isPresent()).isEqualTo(longer.isPresent());
        shorter.ifPresent(at -> assertThat(flip(result, false).orElseThrow()).isBetween(at - 0.005, at + STEP + 0.005));
        longer.ifPresent(at -> assertThat(flip(result, true).orElseThrow()).isBetween(at - STEP - 0.005, at + 0.005));
    }

    /** The first factor on the standing, away from 1, at which another way is the best. */
    private static OptionalDouble changes(HeldBackTruck truck, double step, double end, Optional<IdleWay> now) {
        for (double factor = 1 + step; step > 0 ? factor <= end + 1e-9 : factor >= end - 1e-9; factor += step) {
            if (!best(truck, factor).equals(now)) {
                return OptionalDouble.of(factor);
            }
        }
        return OptionalDouble.empty();
    }

    private static Optional<Double> flip(IdleResult result, boolean longer) {
        return result.flips().stream()
                .filter(flip -> flip.lever() == Lever.SCENE_HOURS && flip.factor() > 1 == longer)
                .map(Flip::factor)
                .findFirst();
    }

    private static Optional<IdleWay> best(HeldBackTruck truck, double factor) {
        IdleWay best = null;
        double least = Double.POSITIVE_INFINITY;
        // those without a device first: among equals one of them is taken
        for (IdleWay way : List.of(IdleWay.IDLING, IdleWay.ENGINE_OFF, IdleWay.HIGH_IDLE, IdleWay.AUTOMATIC_START)) {
            OptionalDouble litres = litres(truck, way, factor);
            if (litres.isPresent() && litres.getAsDouble() < least - 1e-4 * Math.abs(litres.getAsDouble())) {
                least = litres.getAsDouble();
                best = way;
            }
        }
        return Optional.ofNullable(best);
    }

    /** Fuel of standing and of what is owed to the batteries; empty: the way does not serve. */
    private static OptionalDouble litres(HeldBackTruck truck, IdleWay way, double factor) {
        Question question = question(
                truck,
                way == IdleWay.IDLING || way == IdleWay.HIGH_IDLE ? EngineMode.IDLING : EngineMode.OFF,
                equipment(way),
                factor);
        Answer answer = question.answer();
        RunResult run = answer.result();
        if (!answer.isMet()
                || run.events().stream().anyMatch(event -> event.kind() == EventKind.ENGINE_DID_NOT_START)) {
            return OptionalDouble.empty();
        }
        double owedAh = 0;
        for (int i = 0; i < run.batteries().size(); i++) {
            BatterySummary battery = run.batteries().get(i);
            double capacityAh = i == 0
                    ? truck.battery().capacityAh()
                    : truck.second().orElseThrow().battery().capacityAh();
            owedAh += capacityAh * (battery.startChargeFraction() - battery.endChargeFraction());
        }
        // at the regulator's 14.2 V; the drive without its electricity is the idle's fuel in proportion to speed
        double driveLitres = FUEL.idle().atLitresPerH(1900) * DRIVE_S / 3600;
        return OptionalDouble.of(
                run.engine().fuelLitres().orElseThrow() - driveLitres + FUEL.electricalLitresPerH(owedAh * 14.2));
    }

    private static EngineEquipment equipment(IdleWay way) {
        return new EngineEquipment(
                way == IdleWay.HIGH_IDLE
                        ? Optional.of(new HighIdleControl(
                                "control",
                                new IdleTrigger.BelowVoltage(new SensePoint.Node(), 12.8, 13.8),
                                10,
                                60,
                                600,
                                1100))
                        : Optional.empty(),
                way == IdleWay.AUTOMATIC_START
                        ? Optional.of(new AutomaticStart(
                                "starter",
                                new SensePoint.Node(),
                                12,
                                30,
                                600,
                                OptionalDouble.empty(),
                                0,
                                OptionalDouble.of(1800),
                                1000))
                        : Optional.empty(),
                Optional.of(FUEL));
    }

    private static Question question(HeldBackTruck truck, EngineMode mode, EngineEquipment equipment, double factor) {
        Vehicle vehicle = truck.question(truck.at(11.5, 60)).simulation().vehicle();
        EngineEquipment fuelled =
                new EngineEquipment(equipment.highIdle(), equipment.automaticStart(), Optional.of(FUEL));
        Scene scene = new Scene(
                truck.name(),
                new InitialState(0.95, truck.airC()),
                List.of(
                        new Phase(
                                "Drive",
                                EngineMode.DRIVING,
                                DRIVE_S,
                                truck.airC(),
                                EngineSpeed.constant(1900),
                                Set.of()),
                        new Phase(
                                "Watch",
                                mode,
                                WATCH_S * factor,
                                truck.airC(),
                                EngineSpeed.constant(mode == EngineMode.IDLING ? 700 : 0),
                                Set.of("warn"))));
        return new Question(
                Simulation.of(vehicle.withEngine(fuelled), scene),
                List.of(
                        new Requirement.HoldCircuits(Set.of("equipment"), DRIVE_S + truck.holdS() * factor),
                        new Requirement.WillStart(0.4)));
    }
}
