package curbwatt.engine.study.size;

import curbwatt.engine.study.Question;
import curbwatt.engine.study.RunPool;
import curbwatt.engine.study.StudyWatch;
import java.util.List;

/**
 * Finds the need as the conditions grow harder: new and warm, new, stated, and at the odds.
 *
 * @param question what is asked of the vehicle as it is
 * @param seat the battery that is sized
 * @param plan age, temperature and odds
 * @param stated the stated conditions
 */
record SizeSteps(Question question, Seat seat, SizePlan plan, Conditions stated) {

    private static final double WARM_C = 25;

    SizeResult.Steps run(RunPool pool, StudyWatch watch) {
        Need need = search(stated).everywhere(pool, watch);
        double fromAh = need.holdsAh().orElse(CapacitySearch.MOST_AH);
        List<Need> newer = pool.each(
                List.of(stated.asNew().at(WARM_C), stated.asNew()),
                conditions -> search(conditions).near(fromAh),
                watch);
        List<Conditions> draws = Draws.of(stated, plan);
        List<Need> needs = need.holdsAh().isEmpty()
                ? List.of()
                : pool.each(draws, draw -> search(draw).near(fromAh), watch);
        List<Double> sorted = needs.stream()
                .map(each -> each.holdsAh().orElse(Double.POSITIVE_INFINITY))
                .sorted()
                .toList();
        return new SizeResult.Steps(newer.get(0), newer.get(1), need, atOdds(need, needs, sorted), sorted);
    }

    /** Enough draws hold from the need of the last that must. */
    private Need atOdds(Need atStated, List<Need> needs, List<Double> sorted) {
        if (needs.isEmpty()) {
            return atStated;
        }
        double needAh = sorted.get(plan.mustHold() - 1);
        return needs.stream()
                .filter(need -> need.holdsAh().orElse(Double.POSITIVE_INFINITY) == needAh)
                .findFirst()
                .orElseThrow();
    }

    private CapacitySearch search(Conditions conditions) {
        return new CapacitySearch(question.of(conditions), seat);
    }
}
