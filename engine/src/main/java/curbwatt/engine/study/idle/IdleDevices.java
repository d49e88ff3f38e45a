package curbwatt.engine.study.idle;

import curbwatt.engine.control.AutomaticStart;
import curbwatt.engine.control.HighIdleControl;
import curbwatt.engine.control.IdleTrigger;
import curbwatt.engine.control.LowVoltageCutoff;
import curbwatt.engine.control.SensePoint;
import curbwatt.engine.vehicle.Vehicle;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * The devices that are compared: the vehicle's own, and usual ones where it has none.
 *
 * @param highIdle what raises the idle speed
 * @param highIdleIsOwn whether the vehicle has it
 * @param automaticStart what starts the engine
 * @param automaticStartIsOwn whether the vehicle has it
 */
public record IdleDevices(
        HighIdleControl highIdle, boolean highIdleIsOwn, AutomaticStart automaticStart, boolean automaticStartIsOwn) {

    /** A battery below this carries load while the engine idles; our judgement. */
    private static final double RAISE_V = 12.8;

    private static final double RELEASE_V = 13.8;
    private static final double HIGH_IDLE_RPM = 1100;

    /** About half charged under a usual load; our judgement. */
    private static final double START_V = 12.0;

    private static final double ABOVE_TRIP_V = 0.2;
    private static final double MOST_START_V = 13.5;
    private static final double RUN_RPM = 1000;

    /** Refuses missing parts. */
    public IdleDevices {
        Objects.requireNonNull(highIdle, "highIdle");
        Objects.requireNonNull(automaticStart, "automaticStart");
    }

    /** The devices for a vehicle. */
    public static IdleDevices of(Vehicle vehicle) {
        return new IdleDevices(
                vehicle.engine().highIdle().orElseGet(IdleDevices::usualHighIdle),
                vehicle.engine().highIdle().isPresent(),
                vehicle.engine().automaticStart().orElseGet(() -> usualStart(vehicle)),
                vehicle.engine().automaticStart().isPresent());
    }

    private static HighIdleControl usualHighIdle() {
        return new HighIdleControl(
                "idle control",
                new IdleTrigger.BelowVoltage(new SensePoint.Node(), RAISE_V, RELEASE_V),
                10,
                60,
                600,
                HIGH_IDLE_RPM);
    }

    /** Starts before the cutoff that comes first. */
    private static AutomaticStart usualStart(Vehicle vehicle) {
        double tripV = vehicle.cutoffs().stream()
                .mapToDouble(LowVoltageCutoff::tripV)
                .max()
                .orElse(0);
        return new AutomaticStart(
                "automatic start",
                new SensePoint.Node(),
                Math.min(MOST_START_V, Math.max(START_V, tripV + ABOVE_TRIP_V)),
                30,
                600,
                OptionalDouble.empty(),
                0,
                OptionalDouble.of(1800),
                RUN_RPM);
    }
}
