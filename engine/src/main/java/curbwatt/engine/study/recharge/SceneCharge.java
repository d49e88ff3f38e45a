package curbwatt.engine.study.recharge;

import java.util.List;

/**
 * The batteries as a scene begins.
 *
 * @param timeS when it begins, since the roster's start (s)
 * @param chargeFractions state of charge of each battery, the starter battery first
 */
public record SceneCharge(double timeS, List<Double> chargeFractions) {

    /** Copies the list. */
    public SceneCharge {
        chargeFractions = List.copyOf(chargeFractions);
    }

    /** The charge of the battery that has least. */
    public double leastFraction() {
        return chargeFractions.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
    }
}
