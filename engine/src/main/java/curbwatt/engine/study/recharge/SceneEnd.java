package curbwatt.engine.study.recharge;

import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.powertrain.EngineSpeed;
import curbwatt.engine.scene.AirTemperature;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.simulation.Simulation;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The scene up to where recharging begins, and what recharging is like. Drives that the scene ends with are left out:
 * how long a drive has to be is what is asked.
 *
 * @param simulation the vehicle in the scene without its last drives
 * @param leftOutS length of the drives left out (s)
 * @param stages stages that stay on while recharging
 * @param drivingRpm engine speed on the road (1/min)
 * @param idleRpms idle speeds to try (1/min), rising
 * @param phases the phases of the whole scene, from which air under the hood is taken
 */
record SceneEnd(
        Simulation simulation,
        double leftOutS,
        Set<String> stages,
        double drivingRpm,
        List<Double> idleRpms,
        List<Phase> phases) {

    private static final double USUAL_DRIVING_RPM = 1800;
    private static final double USUAL_IDLE_RPM = 700;
    private static final List<Double> TRIED_RPM = List.of(900.0, 1100.0, 1300.0, 1500.0);

    static SceneEnd of(Simulation whole, RechargePlan plan) {
        List<Phase> phases = whole.scene().phases();
        int end = phases.size();
        while (end > 1 && phases.get(end - 1).mode() == EngineMode.DRIVING) {
            end--;
        }
        Optional<Phase> drive = last(phases, EngineMode.DRIVING);
        Set<String> stages = plan.stages()
                .orElseGet(() -> drive.orElse(phases.get(phases.size() - 1)).stages());
        return new SceneEnd(
                whole.in(whole.scene().withPhases(phases.subList(0, end))),
                phases.subList(end, phases.size()).stream()
                        .mapToDouble(Phase::durationS)
                        .sum(),
                stages,
                plan.drivingRpm().orElseGet(() -> drive.map(SceneEnd::meanRpm).orElse(USUAL_DRIVING_RPM)),
                plan.idleRpms().isEmpty() ? usualIdleRpms(phases) : plan.idleRpms(),
                phases);
    }

    private static List<Double> usualIdleRpms(List<Phase> phases) {
        double ownRpm = last(phases, EngineMode.IDLING)
                .map(phase -> (double) Math.round(meanRpm(phase)))
                .filter(rpm -> rpm >= LeastStep.LEAST_RPM && rpm <= LeastStep.MOST_RPM)
                .orElse(USUAL_IDLE_RPM);
        return Stream.concat(Stream.of(ownRpm), TRIED_RPM.stream().filter(rpm -> rpm > ownRpm))
                .toList();
    }

    private static Optional<Phase> last(List<Phase> phases, EngineMode mode) {
        return phases.stream().filter(phase -> phase.mode() == mode).reduce((before, after) -> after);
    }

    /** Mean of the straight lines through the points of a phase's speed (1/min). */
    private static double meanRpm(Phase phase) {
        List<Double> timesS = new ArrayList<>(List.of(0.0));
        phase.speed().points().stream()
                .map(EngineSpeed.Point::timeS)
                .filter(timeS -> timeS > 0 && timeS < phase.durationS())
                .forEach(timesS::add);
        timesS.add(phase.durationS());
        double turns = 0;
        for (int i = 1; i < timesS.size(); i++) {
            double fromRpm = phase.speed().atRpm(timesS.get(i - 1));
            double toRpm = phase.speed().atRpm(timesS.get(i));
            turns += 0.5 * (fromRpm + toRpm) * (timesS.get(i) - timesS.get(i - 1));
        }
        return turns / phase.durationS();
    }

    /** When recharging begins, since the scene's start (s). */
    double startS() {
        return simulation.scene().durationS();
    }

    /** Air at the end of the scene (°C). */
    double airC() {
        Phase last = lastPhase();
        return last.air().atC(last.durationS());
    }

    private Phase lastPhase() {
        List<Phase> kept = simulation.scene().phases();
        return kept.get(kept.size() - 1);
    }

    /** A stretch of it, by a name that no other phase has. */
    Phase phase(String name, Way way, double durationS) {
        Phase plain = new Phase(
                name,
                way.mode(),
                durationS,
                AirTemperature.constant(airC()),
                EngineSpeed.constant(way.engineRpm()),
                stages);
        return last(phases, way.mode())
                .flatMap(Phase::underHood)
                .map(hood -> plain.underHood(AirTemperature.constant(hood.highestC())))
                .orElse(plain);
    }

    /** The scene and a stretch of recharging after it. */
    Simulation recharged(Way way, double durationS) {
        Scene scene = simulation.scene();
        List<Phase> all = new ArrayList<>(scene.phases());
        String name = "Recharging";
        for (String taken = name; all.stream().map(Phase::name).anyMatch(taken::equals); taken = name) {
            name = taken + " again";
        }
        all.add(phase(name, way, durationS));
        return simulation.in(scene.withPhases(all));
    }
}
