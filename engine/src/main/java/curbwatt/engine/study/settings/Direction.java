package curbwatt.engine.study.settings;

import curbwatt.engine.study.AirShift;
import curbwatt.engine.study.BatteryHealth;
import curbwatt.engine.study.CutoffSetting;
import curbwatt.engine.study.LoadScale;
import curbwatt.engine.study.SensorError;
import curbwatt.engine.study.Variation;
import java.util.ArrayList;
import java.util.List;

/**
 * A way in which the vehicle on the road may differ from the one in the scenario. The single ones change one thing; the
 * joint ones change five at once, each by so much less that all together are as far from the scenario as a single one.
 */
public enum Direction {
    /** The sensor reads too little: trips come early. */
    SENSOR_READS_LOW(-1, 0, 0, 0, 0),
    /** The sensor reads too much: trips come late. */
    SENSOR_READS_HIGH(1, 0, 0, 0, 0),
    /** The delay is too short. */
    DELAY_SHORT(0, -1, 0, 0, 0),
    /** The delay is too long. */
    DELAY_LONG(0, 1, 0, 0, 0),
    /** The battery has aged. */
    OLDER(0, 0, 1, 0, 0),
    /** It is colder. */
    COLDER(0, 0, 0, -1, 0),
    /** It is warmer. */
    WARMER(0, 0, 0, 1, 0),
    /** The loads draw more. */
    HEAVIER(0, 0, 0, 0, 1),
    /** The loads draw less. */
    LIGHTER(0, 0, 0, 0, -1),
    /** Everything that makes it trip early, at once. */
    ALL_TOWARDS_EARLY(-1, -1, 1, -1, 1),
    /** Everything that leaves little for the start, at once. */
    ALL_TOWARDS_LATE(1, 1, 1, -1, 1);

    private final int sensor;
    private final int timer;
    private final int age;
    private final int air;
    private final int load;

    Direction(int sensor, int timer, int age, int air, int load) {
        this.sensor = sensor;
        this.timer = timer;
        this.age = age;
        this.air = air;
        this.load = load;
    }

    /** Whether it changes one thing alone. */
    public boolean isSingle() {
        return parts() == 1;
    }

    /** Share of each size that this direction takes at distance 1: 1 for a single one, 1/√5 for the joint ones. */
    public double share() {
        return 1 / Math.sqrt(parts());
    }

    /**
     * The change at a distance.
     *
     * @param cutoff name of the cutoff whose delay may be wrong
     * @param spread the sizes
     * @param distance in multiples of the sizes, 0 or above
     */
    public Variation at(String cutoff, Spread spread, double distance) {
        double by = share() * distance;
        List<Variation> changes = new ArrayList<>();
        if (sensor != 0) {
            changes.add(new SensorError(sensor * by * spread.sensorV()));
        }
        if (timer != 0) {
            double factor = Math.max(0, 1 + timer * by * spread.timerFraction());
            changes.add(new CutoffSetting(
                    cutoff, settings -> settings.tripping(settings.tripV(), factor * settings.tripDelayS())));
        }
        if (age != 0) {
            changes.add(new BatteryHealth(
                    1 - by * spread.capacityLossFraction(), 1 + by * spread.resistanceGrowthFraction()));
        }
        if (air != 0) {
            changes.add(new AirShift(air * by * spread.airK()));
        }
        if (load != 0) {
            changes.add(new LoadScale(1 + load * by * spread.loadFraction()));
        }
        return Variation.all(changes);
    }

    private int parts() {
        return Math.abs(sensor) + Math.abs(timer) + Math.abs(age) + Math.abs(air) + Math.abs(load);
    }
}
