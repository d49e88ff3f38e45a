package curbwatt.engine.study.recharge;

import java.util.List;
import java.util.stream.IntStream;

/**
 * A moment of recharging.
 *
 * @param timeS since recharging began (s)
 * @param chargeFractions state of charge of each battery, the starter battery first
 * @param alternatorA mean alternator current since the moment before (A)
 */
public record ChargePoint(double timeS, List<Double> chargeFractions, double alternatorA) {

    /** Copies the list. */
    public ChargePoint {
        chargeFractions = List.copyOf(chargeFractions);
    }

    /** What the batteries lack together (Ah). */
    public double lackingAh(List<Missing> missing) {
        double lackingAh = 0;
        for (int i = 0; i < missing.size(); i++) {
            lackingAh += missing.get(i).lackingAh(chargeFractions.get(i));
        }
        return lackingAh;
    }

    /** On the straight line to another moment, a share of the way on. */
    ChargePoint towards(ChargePoint other, double fraction) {
        return new ChargePoint(
                timeS + fraction * (other.timeS - timeS),
                IntStream.range(0, chargeFractions.size())
                        .mapToObj(i -> chargeFractions.get(i)
                                + fraction * (other.chargeFractions.get(i) - chargeFractions.get(i)))
                        .toList(),
                other.alternatorA);
    }
}
