package curbwatt.engine.study.size;

import curbwatt.engine.scene.Scene;
import curbwatt.engine.study.Question;
import curbwatt.engine.study.RunPool;
import curbwatt.engine.study.StudyWatch;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.verdict.Requirement;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Sizes the battery that carries the equipment.
 *
 * <p>A battery of another size is one of the same kind: as many of it side by side, so that charge, resistance and
 * cranking current grow together. A battery of the list is fitted to its own label.
 *
 * @param question the vehicle in its scene and what is asked; nothing asked means that every circuit is to be held to
 *     the scene's end and that the engine starts
 * @param plan age, temperature and odds
 * @param candidates batteries that the fleet can buy; may be empty
 */
public record SizeStudy(Question question, SizePlan plan, List<Candidate> candidates) {

    private static final double COLDER_K = 20;
    private static final double COLDEST_C = -40;
    private static final double HOTTEST_C = 70;

    /** Takes what is usual where nothing is asked. */
    public SizeStudy {
        candidates = List.copyOf(candidates);
        if (question.requirements().isEmpty()) {
            question = new Question(question.simulation(), usual(question));
        }
    }

    private static List<Requirement> usual(Question question) {
        return List.of(
                new Requirement.HoldCircuits(
                        all(question), question.simulation().scene().durationS()),
                new Requirement.WillStart(0));
    }

    private static Set<String> all(Question question) {
        return question.simulation().vehicle().circuits().stream()
                .map(Circuit::name)
                .collect(Collectors.toSet());
    }

    /**
     * Carries it out.
     *
     * @param pool works on the runs
     * @param watch hears how far each family of runs is
     */
    public SizeResult run(RunPool pool, StudyWatch watch) {
        Seat seat = Seat.of(question.simulation().vehicle());
        Conditions stated = plan.stated(seat, question.simulation());
        SizeResult.Steps steps = new SizeSteps(question, seat, plan, stated).run(pool, watch);
        CandidateTrial trial = new CandidateTrial(question, seat, stated, Draws.of(stated, plan), plan.mustHold());
        List<CandidateOutcome> outcomes = trial.of(candidates, pool, watch);
        return new SizeResult(
                seat,
                seat.in(question.simulation().vehicle()).battery().parameters().ratedC20Ah(),
                plan,
                question.requirements(),
                circuits(),
                requiredS(),
                stated,
                steps,
                outcomes,
                trial.chosen(outcomes),
                curves(seat, stated, steps, pool, watch),
                new PaperMethod(stated.of(question.simulation()), seat, circuits(), requiredS())
                        .size(stated, plan.marginFactor()));
    }

    private List<HoldCurve> curves(
            Seat seat, Conditions stated, SizeResult.Steps steps, RunPool pool, StudyWatch watch) {
        OptionalDouble needAh = steps.atOdds().holdsAh().isPresent()
                ? steps.atOdds().holdsAh()
                : steps.stated().holdsAh();
        List<Double> sizesAh = HoldCurves.sizes(needAh.orElse(
                seat.in(question.simulation().vehicle()).battery().parameters().ratedC20Ah()));
        return new HoldCurves(question, seat, circuits()).of(conditions(stated), sizesAh, pool, watch);
    }

    /** The stated age at three temperatures, and the new battery at the same. */
    private static List<Conditions> conditions(Conditions stated) {
        List<Double> temperaturesC = Stream.of(
                        stated.batteryC() + COLDER_K, stated.batteryC(), stated.batteryC() - COLDER_K)
                .filter(temperatureC -> temperatureC >= COLDEST_C && temperatureC <= HOTTEST_C)
                .toList();
        boolean isNew = stated.equals(stated.asNew());
        return Stream.of(stated.asNew(), stated)
                .skip(isNew ? 1 : 0)
                .flatMap(age -> temperaturesC.stream().map(age::at))
                .toList();
    }

    private Stream<Requirement.HoldCircuits> holds() {
        return question.requirements().stream()
                .filter(Requirement.HoldCircuits.class::isInstance)
                .map(Requirement.HoldCircuits.class::cast);
    }

    private Set<String> circuits() {
        Set<String> held = holds().flatMap(hold -> hold.circuits().stream()).collect(Collectors.toSet());
        return held.isEmpty() ? all(question) : held;
    }

    private double requiredS() {
        Scene scene = question.simulation().scene();
        return holds().map(Requirement.HoldCircuits::durationS)
                .max(Comparator.naturalOrder())
                .orElse(scene.durationS());
    }
}
