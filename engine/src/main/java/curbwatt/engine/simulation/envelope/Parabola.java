package curbwatt.engine.simulation.envelope;

/**
 * What the values at start, middle and end of a step weigh in one between them, or in a mean over a part of it, on the parabola
 * through the three.
 *
 * @param startFactor weight of the value at the start
 * @param middleFactor weight of that in the middle
 * @param endFactor weight of that at the end
 */
record Parabola(double startFactor, double middleFactor, double endFactor) {

    /** Weights in the value at a share of the step. */
    static Parabola at(double share) {
        return new Parabola((1 - share) * (1 - 2 * share), 4 * share * (1 - share), share * (2 * share - 1));
    }

    /** Weights in the mean from one share to another: Simpson's rule, exact for a parabola. */
    static Parabola mean(double fromShare, double toShare) {
        Parabola from = at(fromShare);
        Parabola half = at(0.5 * (fromShare + toShare));
        Parabola to = at(toShare);
        return new Parabola(
                (from.startFactor + 4 * half.startFactor + to.startFactor) / 6,
                (from.middleFactor + 4 * half.middleFactor + to.middleFactor) / 6,
                (from.endFactor + 4 * half.endFactor + to.endFactor) / 6);
    }

    /** The value, from those at start, middle and end. */
    double through(double start, double middle, double end) {
        return startFactor * start + middleFactor * middle + endFactor * end;
    }
}
