package curbwatt.engine.result;

import java.util.OptionalDouble;

/**
 * What a circuit lived through.
 *
 * @param circuit its name
 * @param firstLostS when it first lost its supply, by cutoff or collapse (s); empty: never
 * @param lostBy what took the supply away: name of the cutoff, or of the circuit itself for a collapse; empty: nothing
 * @param disconnectedS time without supply (s)
 * @param chargeAh charge drawn (Ah)
 * @param peakA largest current (A)
 * @param lowestAtS when its voltage was lowest (s); 0 if it was never supplied
 * @param lowestV lowest voltage at the far end of its feed while supplied (V)
 */
public record CircuitSummary(
        String circuit,
        OptionalDouble firstLostS,
        String lostBy,
        double disconnectedS,
        double chargeAh,
        double peakA,
        double lowestAtS,
        double lowestV) {}
