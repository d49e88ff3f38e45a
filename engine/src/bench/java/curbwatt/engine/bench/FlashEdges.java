package curbwatt.engine.bench;

import curbwatt.engine.load.Load;
import curbwatt.engine.load.LoadPattern;
import curbwatt.engine.load.OnInterval;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** When loads flash, as the integrator needs it: the instants of one common cycle, and what is lit between them. */
final class FlashEdges {

    private final double cycleS;
    private final double[] edgesS;
    private final List<Draw> draws;

    /**
     * Lays out one common cycle.
     *
     * @param flashing loads that flash, with periods and edges in whole milliseconds
     * @param steady loads on the same circuit that don't
     */
    FlashEdges(List<Load> flashing, List<Load> steady) {
        long cycleMs = 1;
        for (Load load : flashing) {
            cycleMs = leastCommon(cycleMs, Math.round(pattern(load).clock().periodMs()));
        }
        cycleS = cycleMs / 1000.0;
        TreeSet<Long> edgesMs = new TreeSet<>(List.of(0L));
        for (Load load : flashing) {
            LoadPattern.Flashing pattern = pattern(load);
            long periodMs = Math.round(pattern.clock().periodMs());
            for (long beginMs = -periodMs; beginMs < cycleMs; beginMs += periodMs) {
                for (OnInterval lit : pattern.onIntervals()) {
                    edgesMs.add(beginMs + Math.round(pattern.phaseMs() + lit.fromMs()));
                    edgesMs.add(beginMs + Math.round(pattern.phaseMs() + lit.toMs()));
                }
            }
        }
        long wholeMs = cycleMs;
        edgesMs.removeIf(edgeMs -> edgeMs < 0 || edgeMs >= wholeMs);
        edgesMs.add(wholeMs);
        edgesS = edgesMs.stream().mapToDouble(edgeMs -> edgeMs / 1000.0).toArray();
        draws = new ArrayList<>();
        for (int i = 0; i + 1 < edgesS.length; i++) {
            double middleMs = 500 * (edgesS[i] + edgesS[i + 1]);
            List<Load> lit = new ArrayList<>(steady);
            flashing.stream().filter(load -> isLit(load, middleMs)).forEach(lit::add);
            draws.add(Draw.of(lit));
        }
    }

    private static LoadPattern.Flashing pattern(Load load) {
        return (LoadPattern.Flashing) load.pattern();
    }

    private static long leastCommon(long a, long b) {
        long greatest = a;
        for (long rest = b; rest != 0; ) {
            long next = greatest % rest;
            greatest = rest;
            rest = next;
        }
        return a / greatest * b;
    }

    private static boolean isLit(Load load, double timeMs) {
        double periodMs = pattern(load).clock().periodMs();
        double insideMs = (timeMs - pattern(load).phaseMs() + periodMs) % periodMs;
        return pattern(load).onIntervals().stream().anyMatch(lit -> lit.fromMs() <= insideMs && insideMs < lit.toMs());
    }

    /** Number of stretches between edges in a cycle. */
    int stretches() {
        return draws.size();
    }

    /** End of a stretch of a cycle (s). */
    double endS(long cycle, int stretch) {
        return cycle * cycleS + edgesS[stretch + 1];
    }

    /** What is lit in a stretch. */
    Draw draw(int stretch) {
        return draws.get(stretch);
    }

    /**
     * What loads draw together.
     *
     * @param constantA currents whatever the voltage (A)
     * @param conductanceS resistors (S)
     * @param powerW powers whatever the voltage (W)
     */
    record Draw(double constantA, double conductanceS, double powerW) {

        static Draw of(List<Load> loads) {
            double constantA = 0;
            double conductanceS = 0;
            double powerW = 0;
            for (Load load : loads) {
                double exponent = load.voltageExponent();
                constantA += exponent == 0 ? load.ratedCurrentA() : 0;
                conductanceS += exponent == 1 ? load.ratedCurrentA() / load.ratedVoltageV() : 0;
                powerW += exponent == -1 ? load.ratedCurrentA() * load.ratedVoltageV() : 0;
            }
            return new Draw(constantA, conductanceS, powerW);
        }

        /** Voltage behind a feed (V). */
        double farV(double nodeV, double feedOhm) {
            double reachV = nodeV - feedOhm * constantA;
            double widening = 1 + feedOhm * conductanceS;
            return 0.5 * (reachV + Math.sqrt(reachV * reachV - 4 * widening * feedOhm * powerW)) / widening;
        }

        double currentA(double farV) {
            return constantA + conductanceS * farV + powerW / farV;
        }

        double slopeAPerV(double farV) {
            return conductanceS - powerW / (farV * farV);
        }
    }
}
