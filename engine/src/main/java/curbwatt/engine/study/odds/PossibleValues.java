package curbwatt.engine.study.odds;

import curbwatt.engine.battery.BatteryCondition;
import curbwatt.engine.control.LowVoltageCutoff;
import curbwatt.engine.load.Load;
import curbwatt.engine.scene.AirTemperature;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.study.odds.Spread.Possible;
import java.util.stream.Stream;

/**
 * Which values of an input a vehicle in a scene can have before a part refuses its figures.
 *
 * @param base the vehicle in the scene as the scenario says
 */
record PossibleValues(Simulation base) {

    private static final double LEAST_CAPACITY = 0.05;
    private static final double MOST_CAPACITY = 1.2;
    private static final double LEAST_RESISTANCE = 0.5;
    private static final double MOST_RESISTANCE = 20;
    private static final double MOST_LOAD_A = 1000;
    private static final double MOST_STANDBY_A = 100;
    private static final double LONGEST_S = 366 * 86400.0;

    Possible of(Input input) {
        return switch (input) {
            case BATTERY_HEALTH -> health();
            case TEMPERATURE -> temperature();
            case LOADS -> loads();
            case ALTERNATOR_HEAT -> new Possible(0.3, 1.5, "");
            case SENSOR -> sensor();
            case SCENE_LENGTH -> length();
        };
    }

    private Possible health() {
        Possible possible = new Possible(0.1, 2, "");
        Stream<BatteryCondition> conditions = Stream.concat(
                        Stream.of(base.vehicle().battery()),
                        base.vehicle().auxiliary().map(auxiliary -> auxiliary.installation()).stream())
                .map(place -> place.battery().condition());
        for (BatteryCondition now : conditions.toList()) {
            possible = possible.and(
                            LEAST_CAPACITY / now.capacityHealthFraction(), MOST_CAPACITY / now.capacityHealthFraction())
                    .and(
                            now.resistanceGrowthFactor() / MOST_RESISTANCE,
                            now.resistanceGrowthFactor() / LEAST_RESISTANCE);
        }
        return possible;
    }

    private Possible temperature() {
        double batteryC = base.scene().start().batteryC();
        Possible possible = new Possible(-40 - batteryC, 70 - batteryC, "K");
        for (Phase phase : base.scene().phases()) {
            for (AirTemperature.Point point : phase.air().points()) {
                possible = possible.and(-50 - point.airC(), 110 - point.airC());
            }
        }
        return possible;
    }

    private Possible loads() {
        Possible possible = new Possible(0, 10, "");
        for (Load load : base.vehicle().circuits().stream()
                .flatMap(circuit -> circuit.loads().stream())
                .toList()) {
            possible =
                    possible.and(0, MOST_LOAD_A / load.ratedCurrentA()).and(0, MOST_STANDBY_A / load.betweenCurrentA());
        }
        return possible;
    }

    private Possible sensor() {
        Possible possible = new Possible(-1, 1, "V");
        for (LowVoltageCutoff cutoff : base.vehicle().cutoffs()) {
            possible = possible.and(-1 - cutoff.sensorErrorV(), 1 - cutoff.sensorErrorV());
        }
        return possible;
    }

    private Possible length() {
        Possible possible = new Possible(0.01, 100, "");
        for (Phase phase : base.scene().phases()) {
            if (Input.isAtScene(phase)) {
                possible = possible.and(1 / phase.durationS(), LONGEST_S / phase.durationS());
            }
        }
        return possible;
    }
}
