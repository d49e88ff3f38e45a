package curbwatt.engine.study.idle;

import curbwatt.engine.study.AlternatorIdleOutput;
import curbwatt.engine.study.Question;
import curbwatt.engine.study.RunPool;
import curbwatt.engine.study.StudyWatch;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.verdict.Requirement;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Stands in every way, with shorter and longer scenes and with weaker and stronger alternators, and finds where the
 * answer changes.
 *
 * @param question the vehicle in its scene, and what is asked
 * @param plan what the ways are compared by
 */
public record IdleStudy(Question question, IdlePlan plan) {

    private static final List<Double> SCENE_FACTORS = List.of(0.25, 0.5, 0.75, 1.0, 1.25, 1.5, 2.0);
    private static final List<Double> ALTERNATOR_FACTORS = List.of(0.5, 0.7, 0.85, 1.0, 1.15, 1.3, 1.5, 2.0);

    /** How near a change is found, as a share of the lever's present value. */
    static final double FOUND_WITHIN_FRACTION = 0.005;

    /** Refuses a scene in which the vehicle never stands. */
    public IdleStudy {
        Objects.requireNonNull(question, "question");
        Objects.requireNonNull(plan, "plan");
        if (!stands(question)) {
            throw new IllegalArgumentException("the vehicle never stands with its equipment in use");
        }
    }

    /** Whether there is anything to compare: a phase with the engine idling, or off with equipment in use. */
    public static boolean stands(Question question) {
        return question.simulation().scene().phases().stream().anyMatch(Standing::isStanding);
    }

    /** What is asked where the scenario asks nothing: all circuits throughout, and a start at the end. */
    public static Question asking(Question question) {
        if (!question.requirements().isEmpty()) {
            return question;
        }
        return new Question(
                question.simulation(),
                List.of(
                        new Requirement.HoldCircuits(
                                question.simulation().vehicle().circuits().stream()
                                        .map(Circuit::name)
                                        .collect(Collectors.toSet()),
                                question.simulation().scene().durationS()),
                        new Requirement.WillStart(0)));
    }

    /** Asks everything. */
    public IdleResult run(RunPool pool, StudyWatch watch) {
        List<Place> places = places();
        List<IdleCase> cases = cases(places, pool, watch);
        List<Tried> tried = new ArrayList<>();
        for (int i = 0; i < places.size(); i++) {
            tried.add(new Tried(places.get(i).lever(), places.get(i).factor(), cases.get(i)));
        }
        List<Flip> flips = new ArrayList<>();
        for (Lever lever : List.of(Lever.SCENE_HOURS, Lever.ALTERNATOR_IDLE)) {
            List<Tried> along =
                    tried.stream().filter(one -> one.lever() == lever).toList();
            int present = along.stream().map(Tried::factor).toList().indexOf(1.0);
            for (int step : new int[] {-1, 1}) {
                nearestFlip(along, present, step, pool).ifPresent(flips::add);
            }
        }
        IdleCase base = tried.stream()
                .filter(one -> one.factor() == 1)
                .findFirst()
                .orElseThrow()
                .outcome();
        flips.addAll(new MoneyFlips(base).all());
        return new IdleResult(devices(), base, tried, flips);
    }

    /** All ways with one lever moved. */
    public IdleCase at(Lever lever, double factor, RunPool pool) {
        return cases(List.of(new Place(lever, factor)), pool, StudyWatch.none()).get(0);
    }

    private record Place(Lever lever, double factor) {}

    private record Case(Question asked, IdleWay way) {}

    private List<Place> places() {
        List<Place> places = new ArrayList<>();
        SCENE_FACTORS.forEach(factor -> places.add(new Place(Lever.SCENE_HOURS, factor)));
        if (question.simulation().vehicle().alternator().isPresent()) {
            ALTERNATOR_FACTORS.forEach(factor -> places.add(new Place(Lever.ALTERNATOR_IDLE, factor)));
        }
        return places;
    }

    private List<IdleCase> cases(List<Place> places, RunPool pool, StudyWatch watch) {
        List<Case> all = new ArrayList<>();
        for (Place place : places) {
            Question moved = moved(place);
            Arrays.stream(IdleWay.values()).forEach(way -> all.add(new Case(moved, way)));
        }
        List<WayOutcome> outcomes = pool.each(
                all, one -> WayOutcome.of(one.asked(), new Standing(one.way(), devices(), plan.engineStages())), watch);
        int ways = IdleWay.values().length;
        List<IdleCase> cases = new ArrayList<>();
        for (int from = 0; from < outcomes.size(); from += ways) {
            cases.add(new IdleCase(plan, outcomes.subList(from, from + ways)));
        }
        return cases;
    }

    private Question moved(Place place) {
        return switch (place.lever()) {
            case SCENE_HOURS -> new SceneStretch(place.factor()).of(question);
            case ALTERNATOR_IDLE -> question.of(new AlternatorIdleOutput(place.factor()));
            default -> throw new IllegalArgumentException(place.lever() + " is moved by arithmetic, not by runs");
        };
    }

    private IdleDevices devices() {
        return IdleDevices.of(question.simulation().vehicle());
    }

    /** Out from the present value to the first that was tried with another answer, and between the two by halving. */
    private Optional<Flip> nearestFlip(List<Tried> along, int present, int step, RunPool pool) {
        Optional<IdleWay> now = along.get(present).outcome().bestWay();
        for (int i = present + step; i >= 0 && i < along.size(); i += step) {
            Optional<IdleWay> best = along.get(i).outcome().bestWay();
            if (!best.equals(now)) {
                return Optional.of(halved(along.get(i - step), along.get(i), now, pool));
            }
        }
        return Optional.empty();
    }

    private Flip halved(Tried near, Tried far, Optional<IdleWay> now, RunPool pool) {
        double same = near.factor();
        double other = far.factor();
        Optional<IdleWay> to = far.outcome().bestWay();
        while (Math.abs(other - same) > FOUND_WITHIN_FRACTION) {
            double middle = 0.5 * (same + other);
            Optional<IdleWay> best = at(near.lever(), middle, pool).bestWay();
            if (best.equals(now)) {
                same = middle;
            } else {
                other = middle;
                to = best;
            }
        }
        return new Flip(near.lever(), 0.5 * (same + other), to);
    }
}
