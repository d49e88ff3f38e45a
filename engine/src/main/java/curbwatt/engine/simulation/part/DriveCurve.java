package curbwatt.engine.simulation.part;

/**
 * A battery's mean current through a long step: the parabola through its values at start, middle and end.
 *
 * <pre>
 *   I(u) = I0 + I1 u + I2 u²,   u = 0 … 1
 * </pre>
 *
 * <p>Two currents are kept. The sum moves the charge. The drive moves the bound charges: in it charging counts γ times,
 * so that a cycle which discharges and charges drives them as its parts would, one after the other.
 */
public final class DriveCurve {

    private double sum0A;
    private double sum1A;
    private double sum2A;
    private double drive0A;
    private double drive1A;
    private double drive2A;

    /** Becomes constant. */
    public void hold(double sumA, double driveA) {
        sum0A = sumA;
        sum1A = 0;
        sum2A = 0;
        drive0A = driveA;
        drive1A = 0;
        drive2A = 0;
    }

    /** Runs through the sums and drives at start, middle and end (A). */
    public void fit(MeanCurrent start, MeanCurrent middle, MeanCurrent end) {
        sum0A = start.sumA();
        sum1A = -3 * start.sumA() + 4 * middle.sumA() - end.sumA();
        sum2A = 2 * start.sumA() - 4 * middle.sumA() + 2 * end.sumA();
        drive0A = start.driveA();
        drive1A = -3 * start.driveA() + 4 * middle.driveA() - end.driveA();
        drive2A = 2 * start.driveA() - 4 * middle.driveA() + 2 * end.driveA();
    }

    /** Becomes the continuation of itself past its end, over a time this many times as long. */
    public void goOn(double ratio) {
        sum0A += sum1A + sum2A;
        sum1A = (sum1A + 2 * sum2A) * ratio;
        sum2A *= ratio * ratio;
        drive0A += drive1A + drive2A;
        drive1A = (drive1A + 2 * drive2A) * ratio;
        drive2A *= ratio * ratio;
    }

    /** Begins elsewhere and runs on as before. */
    public void beginAt(MeanCurrent start) {
        sum0A = start.sumA();
        drive0A = start.driveA();
    }

    /** Becomes as another one. */
    public void takeFrom(DriveCurve other) {
        sum0A = other.sum0A;
        sum1A = other.sum1A;
        sum2A = other.sum2A;
        drive0A = other.drive0A;
        drive1A = other.drive1A;
        drive2A = other.drive2A;
    }

    /** Mean of the sum from the start to a share of the step (A). */
    double meanA(double share) {
        return sum0A + share * (sum1A / 2 + share * sum2A / 3);
    }

    double drive0A() {
        return drive0A;
    }

    double drive1A() {
        return drive1A;
    }

    double drive2A() {
        return drive2A;
    }
}
