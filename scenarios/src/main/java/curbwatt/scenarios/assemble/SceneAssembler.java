package curbwatt.scenarios.assemble;

import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.powertrain.EngineSpeed;
import curbwatt.engine.scene.AirTemperature;
import curbwatt.engine.scene.InitialState;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.scene.Scene;
import curbwatt.scenarios.file.AirEntry;
import curbwatt.scenarios.file.PhaseEntry;
import curbwatt.scenarios.file.RequirementsEntry;
import curbwatt.scenarios.file.SceneEntry;
import curbwatt.scenarios.file.StartEntry;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * From complete entries to a scene.
 *
 * @param guarded catches what the engine refuses
 * @param assumptions told of what is taken although the file does not say it
 */
record SceneAssembler(Guarded guarded, Assumptions assumptions) {
    private static final double MINUTE_S = 60;
    private static final double HOUR_S = 3600;
    private static final double PERCENT = 100;
    private static final String PARKED = "Parked after the scene";

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

    /** Returns the scene, and after it the parked hours that a requirement asks for. */
    Scene parkedAfter(Scene scene, RequirementsEntry entry) {
        if (entry.restartAfterParkedH().isEmpty()) {
            return scene;
        }
        double parkedS = entry.restartAfterParkedH().get() * HOUR_S;
        Phase last = scene.phases().get(scene.phases().size() - 1);
        double airC = entry.parkedAirC().orElseGet(() -> last.air().atC(last.durationS()));
        assumptions.add(String.format(
                Locale.ROOT,
                "After the scene the vehicle stands parked for %s h at %s °C, with what is on without a stage.",
                number(entry.restartAfterParkedH().get()),
                number(airC)));
        return guarded.build(entry.place(), () -> {
            List<Phase> phases = new ArrayList<>(scene.phases());
            phases.add(new Phase(
                    parkedName(scene),
                    EngineMode.PARKED,
                    parkedS,
                    AirTemperature.constant(airC),
                    EngineSpeed.constant(0),
                    Set.of()));
            return scene.withPhases(phases);
        });
    }

    /** A name that no phase of the file has. */
    static String parkedName(Scene scene) {
        List<String> taken = scene.phases().stream().map(Phase::name).toList();
        String name = PARKED;
        for (int i = 2; taken.contains(name); i++) {
            name = PARKED + " (" + i + ")";
        }
        return name;
    }

    private static String number(double value) {
        return value == Math.rint(value) ? Long.toString(Math.round(value)) : Double.toString(value);
    }
}
