package curbwatt.engine.alternator;

import curbwatt.engine.quantity.Require;

/**
 * Output of a rectified machine whose e.m.f. and reactance both grow with speed, into a constant voltage:
 * {@code I(n) = limitA · √(1 − (n0/n)²)}, nothing below {@code n0}.
 *
 * <p>Limits: small machines follow it within 1 to 4 %, large ones do not near cut-in; not to be trusted below 1.1·n0.
 *
 * <p>Source: Caliskan, Perreault, Jahns, Kassakian, IEEE Trans. Circuits and Systems I, 2003.
 *
 * @param limitA current at unlimited speed (A)
 * @param cutInRpm shaft speed n0 of zero output (1/min)
 */
public record ReactanceOutputCurve(double limitA, double cutInRpm) implements OutputCurve {
    /** Refuses a limit or speed out of range. */
    public ReactanceOutputCurve {
        Require.inside("limitA", limitA, 1, 3000, "A");
        Require.inside("cutInRpm", cutInRpm, 0, 10000, "/min");
    }

    /** The curve through the two points of a label. */
    public static ReactanceOutputCurve through(AlternatorLabel label) {
        double r = label.idleA() / label.ratedA();
        double ni = label.idleRpm();
        double nr = label.ratedRpm();
        double cutInSquared = (1 - r * r) / (1 / (ni * ni) - r * r / (nr * nr));
        double limitA = label.ratedA() / Math.sqrt(1 - cutInSquared / (nr * nr));
        return new ReactanceOutputCurve(limitA, Math.sqrt(cutInSquared));
    }

    @Override
    public double maximumA(double shaftRpm) {
        if (shaftRpm <= cutInRpm) {
            return 0;
        }
        double share = cutInRpm / shaftRpm;
        return limitA * Math.sqrt(1 - share * share);
    }

    @Override
    public double trustedFromRpm() {
        return 1.1 * cutInRpm;
    }
}
