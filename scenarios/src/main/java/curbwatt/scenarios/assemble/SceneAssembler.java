package curbwatt.scenarios.assemble;

import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.powertrain.EngineSpeed;
import curbwatt.engine.scene.AirTemperature;
import curbwatt.engine.scene.InitialState;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.verdict.Requirement;
import curbwatt.scenarios.file.AirEntry;
import curbwatt.scenarios.file.PhaseEntry;
import curbwatt.scenarios.file.RequirementsEntry;
import curbwatt.scenarios.file.SceneEntry;
import curbwatt.scenarios.file.StartEntry;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * From complete entries to a scene and what is asked in it.
 *
 * @param guarded catches what the engine refuses
 * @param assumptions told of what is taken although the file does not say it
 */
record SceneAssembler(Guarded guarded, Assumptions assumptions) {
    private static final double MINUTE_S = 60;
    private static final double PERCENT = 100;

    /** Returns the scene. */
    Scene scene(String title, SceneEntry entry) {
        List<Phase> phases = entry.phases().stream().map(this::phase).toList();
        double airC = phases.get(0).airC();
        Optional<Double> batteryC = entry.start().flatMap(StartEntry::batteryC);
        if (batteryC.isEmpty()) {
            assumptions.add("At the start the battery is taken to be as warm as the air of the first phase.");
        }
        return guarded.build(
                entry.place(),
                () -> new Scene(
                        title,
                        new InitialState(
                                entry.start().flatMap(StartEntry::chargePercent).orElse(PERCENT) / PERCENT,
                                batteryC.orElse(airC)),
                        phases));
    }

    private Phase phase(PhaseEntry entry) {
        return guarded.build(
                entry.place(),
                () -> new Phase(
                        entry.name().orElseThrow(),
                        mode(entry),
                        entry.durationMin().orElseThrow() * MINUTE_S,
                        air(entry.airC(), entry.airProfile()).orElseThrow(),
                        air(entry.underHoodC(), entry.underHoodProfile()),
                        speed(entry),
                        Set.copyOf(entry.stages())));
    }

    private static EngineMode mode(PhaseEntry entry) {
        return switch (entry.engine().orElseThrow()) {
            case DRIVING -> EngineMode.DRIVING;
            case IDLING -> EngineMode.IDLING;
            case OFF -> EngineMode.OFF;
            case PARKED -> EngineMode.PARKED;
        };
    }

    private static Optional<AirTemperature> air(Optional<Double> airC, List<AirEntry> profile) {
        if (profile.isEmpty()) {
            return airC.map(AirTemperature::constant);
        }
        return Optional.of(new AirTemperature(profile.stream()
                .map(point -> new AirTemperature.Point(
                        point.atMin().orElseThrow() * MINUTE_S, point.airC().orElseThrow()))
                .toList()));
    }

    private static EngineSpeed speed(PhaseEntry entry) {
        if (entry.speedProfile().isEmpty()) {
            return EngineSpeed.constant(entry.engineRpm().orElse(0.0));
        }
        return new EngineSpeed(entry.speedProfile().stream()
                .map(point -> new EngineSpeed.Point(
                        point.atMin().orElseThrow() * MINUTE_S,
                        point.engineRpm().orElseThrow()))
                .toList());
    }

    /** Returns what is asked: circuits to hold, starting, charge, voltages. */
    List<Requirement> requirements(RequirementsEntry entry) {
        List<Requirement> asked = new ArrayList<>();
        entry.hold()
                .forEach(hold -> asked.add(guarded.build(
                        hold.place(),
                        () -> new Requirement.HoldCircuits(
                                Set.copyOf(hold.circuits()), hold.forMin().orElseThrow() * MINUTE_S))));
        guarded.build(entry.place(), () -> {
            entry.restartMarginV().ifPresent(marginV -> asked.add(new Requirement.WillStart(marginV)));
            entry.leastChargePercent().ifPresent(least -> asked.add(new Requirement.KeepCharge(least / PERCENT)));
            entry.leastAuxiliaryChargePercent()
                    .ifPresent(least -> asked.add(new Requirement.KeepAuxiliaryCharge(least / PERCENT)));
            return asked;
        });
        entry.leastVoltage()
                .forEach(least -> asked.add(guarded.build(
                        least.place(),
                        () -> new Requirement.KeepVoltage(
                                least.circuit().orElseThrow(), least.voltageV().orElseThrow()))));
        return List.copyOf(asked);
    }
}
