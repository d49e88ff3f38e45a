package curbwatt.scenarios.assemble;

import curbwatt.engine.control.AutomaticStart;
import curbwatt.engine.control.HighIdleControl;
import curbwatt.engine.control.IdleTrigger;
import curbwatt.engine.powertrain.Fuel;
import curbwatt.engine.powertrain.FuelRate;
import curbwatt.engine.powertrain.IdleBurn;
import curbwatt.engine.powertrain.UnderHood;
import curbwatt.engine.vehicle.EngineEquipment;
import curbwatt.scenarios.file.AutomaticStartEntry;
import curbwatt.scenarios.file.EngineEntry;
import curbwatt.scenarios.file.IdleControlEntry;
import curbwatt.scenarios.file.UnderHoodEntry;
import curbwatt.scenarios.file.VehicleEntry;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * From a vehicle entry to what acts on its engine and what that burns.
 *
 * @param guarded catches what the engine refuses
 * @param assumptions told of what is taken although the file does not say it
 */
record EngineAssembler(Guarded guarded, Assumptions assumptions) {
    private static final double MINUTE_S = 60;
    private static final double PERCENT = 100;
    private static final double USUAL_RAISE_DELAY_S = 10;
    private static final double USUAL_RELEASE_DELAY_S = 60;
    private static final double USUAL_DWELL_S = 120;
    private static final double USUAL_START_DELAY_S = 0;
    private static final double USUAL_STOP_DELAY_S = 0;
    private static final double USUAL_MINIMUM_RUN_MIN = 10;

    /** Returns the devices and the fuel. */
    EngineEquipment equipment(VehicleEntry entry) {
        return new EngineEquipment(
                entry.idleControl().map(control -> guarded.build(control.place(), () -> highIdle(control))),
                entry.automaticStart().map(device -> guarded.build(device.place(), () -> automatic(device))),
                entry.engine().map(engine -> guarded.build(engine.place(), () -> fuel(engine))),
                entry.underHood().map(hood -> guarded.build(hood.place(), () -> underHood(hood))));
    }

    private static HighIdleControl highIdle(IdleControlEntry entry) {
        IdleTrigger trigger = entry.raiseBelowV().isPresent()
                ? new IdleTrigger.BelowVoltage(
                        SensePlace.of(entry.senseAtNode()),
                        entry.raiseBelowV().get(),
                        entry.releaseAboveV().orElseThrow())
                : new IdleTrigger.Discharging(
                        entry.raiseAboveDischargeA().orElseThrow(),
                        entry.releaseBelowDischargeA().orElseThrow());
        return new HighIdleControl(
                entry.name().orElse("idle control"),
                trigger,
                entry.raiseDelayS().orElse(USUAL_RAISE_DELAY_S),
                entry.releaseDelayS().orElse(USUAL_RELEASE_DELAY_S),
                entry.minimumDwellS().orElse(USUAL_DWELL_S),
                entry.highIdleRpm().orElseThrow());
    }

    private static AutomaticStart automatic(AutomaticStartEntry entry) {
        return new AutomaticStart(
                entry.name().orElse("automatic start"),
                SensePlace.of(entry.senseAtNode()),
                entry.startBelowV().orElseThrow(),
                entry.startDelayS().orElse(USUAL_START_DELAY_S),
                entry.minimumRunMin().orElse(USUAL_MINIMUM_RUN_MIN) * MINUTE_S,
                optional(entry.stopBelowChargeA()),
                entry.stopDelayS().orElse(USUAL_STOP_DELAY_S),
                optional(entry.stopAfterMin().map(minutes -> minutes * MINUTE_S)),
                entry.runRpm().orElseThrow());
    }

    private FuelRate fuel(EngineEntry entry) {
        if (entry.alternatorEfficiencyPercent().isEmpty()) {
            assumptions.add("The alternator is taken to turn 67 % of its shaft power into electricity, the European"
                    + " baseline; older machines have about 55 %.");
        }
        Fuel fuel = switch (entry.fuel().orElseThrow()) {
            case PETROL -> Fuel.PETROL;
            case PETROL_TURBO -> Fuel.PETROL_TURBO;
            case DIESEL -> Fuel.DIESEL;
        };
        return new FuelRate(
                fuel,
                IdleBurn.through(
                        entry.atRpm().orElseThrow(), entry.idleLitresPerHour().orElseThrow()),
                entry.alternatorEfficiencyPercent()
                        .map(percent -> percent / PERCENT)
                        .orElse(FuelRate.EUROPEAN_BASELINE_FRACTION));
    }

    private static UnderHood underHood(UnderHoodEntry entry) {
        return new UnderHood(
                entry.settledRiseK().orElseThrow(),
                entry.warmingMin().orElseThrow() * MINUTE_S,
                entry.coolingMin().orElseThrow() * MINUTE_S);
    }

    private static OptionalDouble optional(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }
}
