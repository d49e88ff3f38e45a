package curbwatt.engine.study.idle;

import curbwatt.engine.scene.Phase;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.study.Question;
import curbwatt.engine.study.SceneLength;
import curbwatt.engine.verdict.Requirement;

/**
 * The vehicle stands longer, or shorter, and what is to be held is held as much longer.
 *
 * @param factor what the time of standing is multiplied by, above 0
 */
public record SceneStretch(double factor) {

    /** The question with the stretched scene. */
    public Question of(Question base) {
        Scene before = base.simulation().scene();
        return new Question(
                new SceneLength(factor, Standing::isStanding).of(base.simulation()),
                base.requirements().stream()
                        .map(asked -> asked instanceof Requirement.HoldCircuits hold
                                ? new Requirement.HoldCircuits(hold.circuits(), stretchedS(before, hold.durationS()))
                                : asked)
                        .toList());
    }

    /** The time of the stretched scene at which it is as far on as the scene was at a time (s). */
    double stretchedS(Scene scene, double timeS) {
        double leftS = timeS;
        double stretchedS = 0;
        for (Phase phase : scene.phases()) {
            double inPhaseS = Math.min(leftS, phase.durationS());
            stretchedS += Standing.isStanding(phase) ? factor * inPhaseS : inPhaseS;
            leftS -= inPhaseS;
        }
        return stretchedS + leftS;
    }
}
