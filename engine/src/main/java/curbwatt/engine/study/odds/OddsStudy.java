package curbwatt.engine.study.odds;

import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.study.Question;
import curbwatt.engine.study.RunPool;
import curbwatt.engine.study.StudyWatch;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Runs a scene many times with drawn inputs and counts what becomes of it.
 *
 * @param base the vehicle in the scene as the scenario says, and what is asked
 * @param plan how the inputs are drawn
 */
public record OddsStudy(Question base, OddsPlan plan) {

    private static final int STRETCHES = 120;

    /** Refuses missing parts. */
    public OddsStudy {
        Objects.requireNonNull(base, "base");
        Objects.requireNonNull(plan, "plan");
    }

    /** The inputs that the vehicle and the scene have and that are spread. */
    public List<Input> inputs() {
        return List.of(Input.values()).stream()
                .filter(input -> input.isIn(base.simulation()) && isVarying(input))
                .toList();
    }

    private boolean isVarying(Input input) {
        return plan.spread(input).isSpread();
    }

    /**
     * Runs all draws.
     *
     * @throws IllegalArgumentException if no input varies, or one of them lies outside what is possible
     * @throws curbwatt.engine.study.StudyStoppedException if the watch stopped it
     */
    public OddsResult run(RunPool pool, StudyWatch watch) {
        List<Input> inputs = inputs();
        if (inputs.isEmpty()) {
            throw new IllegalArgumentException("no input varies; there is nothing to draw");
        }
        Trial trial = new Trial(atFixedValues(), inputs);
        Cases cases = cases(inputs);
        double stretchS = cases.first().stream()
                        .mapToDouble(values ->
                                trial.question(values).simulation().scene().durationS())
                        .max()
                        .orElseThrow()
                / STRETCHES;
        List<Trace> traces = pool.each(
                cases.all(),
                one -> one.watched() ? traced(trial, one.values(), stretchS) : plain(trial, one.values()),
                watch);
        List<Draw> draws = new ArrayList<>();
        for (int i = 0; i < plan.runs(); i++) {
            draws.add(new Draw(cases.first().get(i), traces.get(i).outcome()));
        }
        Ranking ranking = new Ranking(
                plan, inputs, draws, traces.stream().map(Trace::outcome).toList());
        return new OddsResult(
                plan,
                inputs,
                draws,
                ranking.ofHold(),
                ranking.ofStart(),
                Fan.of(traces.stream().flatMap(trace -> trace.course().stream()).toList(), STRETCHES, stretchS, pool),
                traces.size());
    }

    /** Inputs that are fixed stand at their value, which need not be the scenario's. */
    private Question atFixedValues() {
        Simulation fixed = base.simulation();
        List<Input> varying = inputs();
        for (Input input : Input.values()) {
            Spread spread = plan.spread(input);
            if (!varying.contains(input) && input.isIn(base.simulation())) {
                fixed = input.variation(spread.valueAt(0.5, new PossibleValues(base.simulation()).of(input)))
                        .of(fixed);
            }
        }
        return new Question(fixed, base.requirements());
    }

    private Cases cases(List<Input> inputs) {
        int width = inputs.size();
        int columns = plan.indices() ? 2 * width : width;
        List<List<Double>> points = new UnitPoints(plan.sampling(), plan.seed(), columns).points(plan.runs());
        List<Spread.Possible> possible =
                inputs.stream().map(new PossibleValues(base.simulation())::of).toList();
        List<Case> all = new ArrayList<>();
        List<List<Double>> first = rows(points, inputs, possible, 0);
        first.forEach(values -> all.add(new Case(values, true)));
        if (plan.indices()) {
            List<List<Double>> second = rows(points, inputs, possible, width);
            second.forEach(values -> all.add(new Case(values, false)));
            for (int input = 0; input < width; input++) {
                for (int row = 0; row < first.size(); row++) {
                    List<Double> mixed = new ArrayList<>(first.get(row));
                    mixed.set(input, second.get(row).get(input));
                    all.add(new Case(mixed, false));
                }
            }
        }
        return new Cases(first, all);
    }

    private List<List<Double>> rows(
            List<List<Double>> points, List<Input> inputs, List<Spread.Possible> possible, int from) {
        List<List<Double>> rows = new ArrayList<>();
        for (List<Double> point : points) {
            List<Double> values = new ArrayList<>();
            for (int i = 0; i < inputs.size(); i++) {
                values.add(plan.spread(inputs.get(i)).valueAt(point.get(from + i), possible.get(i)));
            }
            rows.add(values);
        }
        return rows;
    }

    private static Trace traced(Trial trial, List<Double> values, double stretchS) {
        Course.Watching recorder = new Course.Watching(STRETCHES, stretchS);
        Outcome outcome = trial.outcome(values, recorder);
        return new Trace(outcome, Optional.of(recorder.course()));
    }

    private static Trace plain(Trial trial, List<Double> values) {
        return new Trace(trial.figures(values), Optional.empty());
    }

    private record Case(List<Double> values, boolean watched) {}

    private record Cases(List<List<Double>> first, List<Case> all) {}

    private record Trace(Outcome outcome, Optional<Course> course) {}
}
