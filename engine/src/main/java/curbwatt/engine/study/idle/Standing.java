package curbwatt.engine.study.idle;

import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.powertrain.EngineSpeed;
import curbwatt.engine.powertrain.FuelRate;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.study.Variation;
import curbwatt.engine.vehicle.EngineEquipment;
import java.util.HashSet;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * Has the engine stand in one of the ways.
 *
 * <p>A vehicle stands where a phase has it idle or off, with its equipment in use. Where the scene has it idle
 * somewhere, an idling way follows the scene; where it never does, it idles in every phase that has it off.
 *
 * @param way the way
 * @param devices the devices that are compared
 * @param engineStages stages that are on while the engine runs alone
 */
public record Standing(IdleWay way, IdleDevices devices, Set<String> engineStages) implements Variation {

    /** A usual idle speed, where nothing says another (1/min). */
    private static final double USUAL_IDLE_RPM = 700;

    /** Copies the stages. */
    public Standing {
        Objects.requireNonNull(way, "way");
        Objects.requireNonNull(devices, "devices");
        engineStages = Set.copyOf(engineStages);
    }

    /** Whether a vehicle stands in a phase with its equipment in use. */
    public static boolean isStanding(Phase phase) {
        return phase.mode() == EngineMode.IDLING || phase.mode() == EngineMode.OFF;
    }

    /** Whether the engine idles anywhere in the scene. */
    public static boolean idles(Scene scene) {
        return scene.phases().stream().anyMatch(phase -> phase.mode() == EngineMode.IDLING);
    }

    @Override
    public Simulation of(Simulation base) {
        EngineEquipment own = base.vehicle().engine();
        EngineEquipment now = new EngineEquipment(
                way == IdleWay.HIGH_IDLE ? Optional.of(devices.highIdle()) : Optional.empty(),
                way == IdleWay.AUTOMATIC_START ? Optional.of(devices.automaticStart()) : Optional.empty(),
                own.fuel());
        double idleRpm = idleRpm(own.fuel());
        boolean follows = idles(base.scene());
        return base.with(base.vehicle().withEngine(now))
                .in(base.scene()
                        .withPhases(base.scene().phases().stream()
                                .map(phase -> inWay(phase, follows, idleRpm))
                                .toList()));
    }

    private Phase inWay(Phase phase, boolean follows, double idleRpm) {
        if (!way.runs() && phase.mode() == EngineMode.IDLING) {
            Set<String> left = new HashSet<>(phase.stages());
            left.removeAll(engineStages);
            return new Phase(phase.name(), EngineMode.OFF, phase.durationS(), phase.air(), phase.speed(), left);
        }
        if (way.runs() && !follows && phase.mode() == EngineMode.OFF) {
            Set<String> more = new HashSet<>(phase.stages());
            more.addAll(engineStages);
            return new Phase(
                    phase.name(),
                    EngineMode.IDLING,
                    phase.durationS(),
                    phase.air(),
                    EngineSpeed.constant(idleRpm),
                    more);
        }
        return phase;
    }

    /** The speed at which the fuel is known: nobody measures it but at idle. */
    static double idleRpm(Optional<FuelRate> fuel) {
        return fuel.map(rate -> rate.idle().points().get(0).engineRpm()).orElse(USUAL_IDLE_RPM);
    }
}
