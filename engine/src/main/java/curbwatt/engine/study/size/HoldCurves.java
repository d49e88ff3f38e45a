package curbwatt.engine.study.size;

import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.study.Answer;
import curbwatt.engine.study.Question;
import curbwatt.engine.study.RunPool;
import curbwatt.engine.study.SceneLength;
import curbwatt.engine.study.StudyWatch;
import curbwatt.engine.verdict.Requirement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Hold times for a row of sizes, in a scene whose longest stretch with the engine off goes on for longer, so that times
 * beyond what is asked show too.
 *
 * @param question what is asked of the vehicle as it is
 * @param seat the battery that is sized
 * @param circuits circuits that are to be held
 */
record HoldCurves(Question question, Seat seat, Set<String> circuits) {

    /** How many times as long the stretch goes on. */
    static final double LONGER = 3;

    private static final int SIZES = 10;
    private static final double LEAST_OF_NEED = 0.25;
    private static final double MOST_OF_NEED = 1.6;

    private record Case(Conditions conditions, double c20Ah) {}

    /** Sizes about a need, evenly spread (Ah). */
    static List<Double> sizes(double needAh) {
        double stepAh = (MOST_OF_NEED - LEAST_OF_NEED) * needAh / (SIZES - 1);
        return IntStream.range(0, SIZES)
                .mapToObj(i -> Math.max(CapacitySearch.LEAST_AH, LEAST_OF_NEED * needAh + i * stepAh))
                .distinct()
                .toList();
    }

    List<HoldCurve> of(List<Conditions> conditions, List<Double> sizesAh, RunPool pool, StudyWatch watch) {
        Question longer = longer();
        List<Case> cases = conditions.stream()
                .flatMap(each -> sizesAh.stream().map(c20Ah -> new Case(each, c20Ah)))
                .toList();
        List<HoldCurve.Point> points = pool.each(cases, each -> point(longer, each), watch);
        List<HoldCurve> curves = new ArrayList<>();
        for (int i = 0; i < conditions.size(); i++) {
            curves.add(new HoldCurve(conditions.get(i), points.subList(i * sizesAh.size(), (i + 1) * sizesAh.size())));
        }
        return List.copyOf(curves);
    }

    private HoldCurve.Point point(Question longer, Case each) {
        Answer answer = new CapacitySearch(longer.of(each.conditions()), seat).answer(each.c20Ah());
        double heldS = answer.heldS().orElseThrow();
        return new HoldCurve.Point(each.c20Ah(), heldS, answer.isMet());
    }

    private Question longer() {
        Scene scene = question.simulation().scene();
        Phase longest = scene.phases().stream()
                .filter(phase -> phase.mode() == EngineMode.OFF)
                .max(Comparator.comparingDouble(Phase::durationS))
                .orElseGet(() -> scene.phases().get(scene.phases().size() - 1));
        Question longer = question.of(new SceneLength(LONGER, longest::equals));
        double endS = longer.simulation().scene().durationS();
        return new Question(longer.simulation(), List.of(new Requirement.HoldCircuits(circuits, endS)));
    }
}
