package curbwatt.engine.battery;

import curbwatt.engine.numeric.Root;
import java.util.List;
import java.util.Locale;
import java.util.function.IntFunction;
import java.util.stream.Stream;

/** A battery of charge alone, empty when charge drawn and charge bound add up to the capacity: the published models. */
final class Cell {
    private static final double SECONDS_PER_HOUR = 3600;

    private final DiffusionModes modes;
    private final double capacityAh;
    private final double[] boundAh;
    private double removedAh;

    Cell(DiffusionModes modes, double capacityAh) {
        this.modes = modes;
        this.capacityAh = capacityAh;
        this.boundAh = new double[modes.size()];
    }

    /** Kinetic battery model with c and k' as published. */
    static Cell kinetic(double availableFraction, double ratePerH, double capacityAh) {
        return new Cell(
                new DiffusionModes(List.of(1 / ratePerH), List.of((1 - availableFraction) / availableFraction), 1),
                capacityAh);
    }

    record Segment(double currentA, double durationS) {}

    /** Reads "628@0, 0@19.5, 628@26": milliamperes from a time in minutes on; the last lasts for ever. */
    static IntFunction<Segment> profile(String text) {
        double[][] steps = Stream.of(text.split(","))
                .map(step -> Stream.of(step.trim().split("@"))
                        .mapToDouble(Double::parseDouble)
                        .toArray())
                .toArray(double[][]::new);
        return i -> new Segment(steps[i][0] / 1000, i + 1 < steps.length ? (steps[i + 1][1] - steps[i][1]) * 60 : 1e9);
    }

    /** Equal steps of a repeated list of currents. */
    static IntFunction<Segment> repeating(double durationS, double... currentsA) {
        return i -> new Segment(currentsA[i % currentsA.length], durationS);
    }

    /** Life under a profile, s. */
    double lifeS(IntFunction<Segment> profile) {
        double atS = 0;
        for (int i = 0; ; i++) {
            Segment segment = profile.apply(i);
            if (segment.currentA() > 0 && leftAfterAh(segment.currentA(), segment.durationS()) <= 0) {
                return atS + Root.between(s -> leftAfterAh(segment.currentA(), s), 0, segment.durationS(), 1e-9);
            }
            draw(segment.currentA(), segment.durationS());
            atS += segment.durationS();
        }
    }

    void draw(double currentA, double durationS) {
        modes.advance(boundAh, currentA, durationS);
        removedAh += currentA * durationS / SECONDS_PER_HOUR;
    }

    /** Largest current that the cell can give for a time, A. */
    double mostA(double durationS) {
        return Root.between(a -> leftAfterAh(a, durationS), 0, capacityAh * SECONDS_PER_HOUR / durationS, 1e-12);
    }

    /** Takes charge out of a rested cell. */
    Cell atTotalAh(double totalAh) {
        removedAh = capacityAh - totalAh;
        return this;
    }

    double totalAh() {
        return capacityAh - removedAh;
    }

    /** Charge in the available well of the kinetic model, Ah. */
    double availableAh(double availableFraction) {
        return availableFraction * leftAh(removedAh, boundAh);
    }

    private double leftAfterAh(double currentA, double durationS) {
        double[] bound = boundAh.clone();
        modes.advance(bound, currentA, durationS);
        return leftAh(removedAh + currentA * durationS / SECONDS_PER_HOUR, bound);
    }

    private double leftAh(double removed, double[] bound) {
        double left = capacityAh - removed;
        for (double x : bound) {
            left -= x;
        }
        return left;
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%.3f of %.3f Ah", totalAh(), capacityAh);
    }
}
