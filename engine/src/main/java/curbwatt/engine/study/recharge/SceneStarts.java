package curbwatt.engine.study.recharge;

import curbwatt.engine.scene.Phase;
import curbwatt.engine.scene.Roster;
import curbwatt.engine.simulation.record.Recorder;
import curbwatt.engine.simulation.record.Step;
import curbwatt.engine.study.idle.Standing;
import java.util.ArrayList;
import java.util.List;

/** Keeps the charge at the start of each scene of a roster. Phases that stand one after the other are one scene. */
final class SceneStarts implements Recorder {

    /** The clock adds up steps, the roster phases: the same instant may differ in the last digits (s). */
    private static final double ROUNDING_S = 1e-3;

    private final List<Double> startsS;
    private final List<SceneCharge> kept = new ArrayList<>();

    /** Makes a recorder for a roster. */
    SceneStarts(Roster roster) {
        startsS = startsS(roster);
    }

    private static List<Double> startsS(Roster roster) {
        List<Double> startsS = new ArrayList<>();
        double timeS = 0;
        boolean stood = false;
        for (Phase phase : roster.asScene().phases()) {
            boolean stands = Standing.isStanding(phase);
            // a scene at the very start begins with what the file says, not with what recharging left
            if (stands && !stood && timeS > 0) {
                startsS.add(timeS);
            }
            stood = stands;
            timeS += phase.durationS();
        }
        return startsS;
    }

    @Override
    public void record(Step step) {
        if (kept.size() < startsS.size() && step.endS() >= startsS.get(kept.size()) - ROUNDING_S) {
            kept.add(new SceneCharge(
                    startsS.get(kept.size()),
                    step.hasEquipmentNode()
                            ? List.of(step.chargeEndFraction(), step.auxiliaryChargeEndFraction())
                            : List.of(step.chargeEndFraction())));
        }
    }

    /** What was kept up to a time (s), in order of time. */
    List<SceneCharge> until(double timeS) {
        return kept.stream().filter(scene -> scene.timeS() < timeS).toList();
    }
}
