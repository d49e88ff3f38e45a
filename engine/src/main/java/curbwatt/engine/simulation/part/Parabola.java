package curbwatt.engine.simulation.part;

/**
 * What the differences of the values in the middle and at the end of a step from that at its start weigh in one between them,
 * or in a mean over a part of it, on the parabola through the three. What stands still stays exactly as it is.
 *
 * @param middleFactor weight of the value in the middle
 * @param endFactor weight of that at the end
 */
public record Parabola(double middleFactor, double endFactor) {

    /** Weights in the value at a share of the step. */
    public static Parabola at(double share) {
        return new Parabola(4 * share * (1 - share), share * (2 * share - 1));
    }

    /** Weights in the mean from one share to another: Simpson's rule, exact for a parabola. */
    public static Parabola mean(double fromShare, double toShare) {
        Parabola from = at(fromShare);
        Parabola half = at(0.5 * (fromShare + toShare));
        Parabola to = at(toShare);
        return new Parabola(
                (from.middleFactor + 4 * half.middleFactor + to.middleFactor) / 6,
                (from.endFactor + 4 * half.endFactor + to.endFactor) / 6);
    }

    /** The value, from those at start, middle and end. */
    public double through(double start, double middle, double end) {
        return start + middleFactor * (middle - start) + endFactor * (end - start);
    }

    /** What no value of a step falls below, from those at start, middle and end: a parabola stands out by an eighth of its bend. */
    public static double floor(double start, double middle, double end) {
        return Math.min(start, Math.min(middle, end)) - outside(start, middle, end);
    }

    /** What no value of a step rises above. */
    public static double ceiling(double start, double middle, double end) {
        return Math.max(start, Math.max(middle, end)) + outside(start, middle, end);
    }

    private static double outside(double start, double middle, double end) {
        return 0.2 * Math.abs(start - 2 * middle + end);
    }

    /** First share of a step, after one, at which the parabola through three values is zero; 1: none. */
    public static double zero(double start, double middle, double end, double after) {
        double linear = -3 * start + 4 * middle - end;
        double square = 2 * start - 4 * middle + 2 * end;
        double discriminant = linear * linear - 4 * square * start;
        if (!(discriminant >= 0)) {
            return 1;
        }
        double half = -0.5 * (linear + Math.copySign(Math.sqrt(discriminant), linear));
        double one = half / square;
        double other = start / half;
        double first = one > after ? one : Double.POSITIVE_INFINITY;
        first = other > after ? Math.min(first, other) : first;
        return Math.min(1, first);
    }
}
