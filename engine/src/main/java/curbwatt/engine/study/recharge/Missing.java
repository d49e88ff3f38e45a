package curbwatt.engine.study.recharge;

import curbwatt.engine.result.BatterySummary;
import curbwatt.engine.vehicle.AuxiliaryBattery;
import curbwatt.engine.vehicle.BatteryInstallation;
import curbwatt.engine.vehicle.Vehicle;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * What a battery lacks at the scene's end.
 *
 * @param battery its name
 * @param capacityAh its capacity, aged as it is (Ah)
 * @param startFraction its state of charge at the scene's start
 * @param endFraction its state of charge at the scene's end
 * @param wantedFraction the state of charge it is to have again
 */
public record Missing(
        String battery, double capacityAh, double startFraction, double endFraction, double wantedFraction) {

    /** What counts as full: the current dies away near it, so that the rest takes for ever. Our judgement. */
    public static final double FULL_FRACTION = 0.998;

    /** Refuses a missing name. */
    public Missing {
        Objects.requireNonNull(battery, "battery");
    }

    /** Charge up to what is wanted (Ah); 0 if it has more. */
    public double ah() {
        return lackingAh(endFraction);
    }

    /** What it lacks at a state of charge (Ah). */
    double lackingAh(double chargeFraction) {
        return Math.max(0, wantedFraction - chargeFraction) * capacityAh;
    }

    /** What each battery of a vehicle lacks after a scene, the starter battery first. */
    static List<Missing> of(Vehicle vehicle, List<BatterySummary> batteries, OptionalDouble wantedFraction) {
        List<BatteryInstallation> places = Stream.concat(
                        Stream.of(vehicle.battery()), vehicle.auxiliary().map(AuxiliaryBattery::installation).stream())
                .toList();
        List<Missing> missing = new ArrayList<>();
        for (int i = 0; i < places.size(); i++) {
            BatterySummary summary = batteries.get(i);
            missing.add(new Missing(
                    summary.battery(),
                    places.get(i).battery().capacityAh(),
                    summary.startChargeFraction(),
                    summary.endChargeFraction(),
                    Math.min(FULL_FRACTION, wantedFraction.orElse(summary.startChargeFraction()))));
        }
        return missing;
    }
}
