package curbwatt.engine.study.odds;

import curbwatt.engine.study.RunPool;
import curbwatt.engine.study.StudyWatch;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;

/**
 * How the courses of all runs lie about each other.
 *
 * @param stretchS length of a stretch (s)
 * @param stretches stretch by stretch, in order of time
 */
public record Fan(double stretchS, List<Stretch> stretches) {

    /** Shares below which the quantiles lie. */
    public static final List<Integer> PERCENTS = List.of(5, 25, 50, 75, 95);

    /** Copies the list. */
    public Fan {
        stretches = List.copyOf(stretches);
    }

    /**
     * A stretch of time.
     *
     * @param endS its end, since the scene's start (s)
     * @param running how many runs last into it
     * @param lowestV quantiles of the lowest voltage in it, one for each of {@link Fan#PERCENTS} (V)
     * @param chargeFraction quantiles of the charge at its end, one for each of {@link Fan#PERCENTS}
     */
    public record Stretch(double endS, int running, List<Double> lowestV, List<Double> chargeFraction) {

        /** Copies the lists. */
        public Stretch {
            lowestV = List.copyOf(lowestV);
            chargeFraction = List.copyOf(chargeFraction);
        }
    }

    /** The fan of courses; stretches that no run reaches are left out. */
    static Fan of(List<Course> courses, int stretches, double stretchS, RunPool pool) {
        List<Integer> places = IntStream.range(0, stretches).boxed().toList();
        List<Optional<Stretch>> all =
                pool.each(places, place -> stretch(courses, place, (place + 1) * stretchS), StudyWatch.none());
        return new Fan(stretchS, all.stream().flatMap(Optional::stream).toList());
    }

    private static Optional<Stretch> stretch(List<Course> courses, int place, double endS) {
        List<Course> there =
                courses.stream().filter(course -> course.reaches(place)).toList();
        return there.isEmpty()
                ? Optional.empty()
                : Optional.of(new Stretch(
                        endS,
                        there.size(),
                        quantiles(there, course -> course.lowestV(place)),
                        quantiles(there, course -> course.chargeFraction(place))));
    }

    private static List<Double> quantiles(List<Course> courses, ToDoubleFunction<Course> figure) {
        double[] values = courses.stream().mapToDouble(figure).toArray();
        Percentile percentile = new Percentile().withEstimationType(Percentile.EstimationType.R_7);
        percentile.setData(values);
        return PERCENTS.stream().map(percentile::evaluate).toList();
    }
}
