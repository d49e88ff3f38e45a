package curbwatt.engine.simulation.part;

/** A battery's main current at one instant, averaged over the combinations of lit loads. */
public final class MeanCurrent {

    private double dischargingA;
    private double chargingA;
    private double chargingFactor;

    /** Begins anew; charging counts so many times in the drive. */
    public void clear(double factor) {
        dischargingA = 0;
        chargingA = 0;
        chargingFactor = factor;
    }

    /** Adds the current of a combination, by its share of the time. */
    public void add(double share, double mainA) {
        if (mainA > 0) {
            dischargingA += share * mainA;
        } else {
            chargingA += share * mainA;
        }
    }

    /** What moves the charge (A). */
    public double sumA() {
        return dischargingA + chargingA;
    }

    /** What moves the bound charges (A). */
    public double driveA() {
        return dischargingA + chargingFactor * chargingA;
    }
}
