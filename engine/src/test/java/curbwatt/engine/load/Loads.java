package curbwatt.engine.load;

import java.util.Set;

/** Loads for tests; those without stages are on whenever they are fed. */
public final class Loads {
    private static final double RATED_V = 12;

    private Loads() {}

    /** A current whatever the voltage. */
    public static Load current(String name, double currentA, String... stages) {
        return load(name, currentA, 0, new LoadPattern.Continuous(), stages);
    }

    /** A power whatever the voltage. */
    public static Load power(String name, double powerW, String... stages) {
        return load(name, powerW / RATED_V, -1, new LoadPattern.Continuous(), stages);
    }

    /** A resistor. */
    public static Load resistor(String name, double ohm, String... stages) {
        return load(name, RATED_V / ohm, 1, new LoadPattern.Continuous(), stages);
    }

    /** A constant current in a pattern. */
    public static Load patterned(String name, double currentA, LoadPattern pattern, String... stages) {
        return load(name, currentA, 0, pattern, stages);
    }

    /** A load rated at 12 V that never drops out and draws nothing at rest. */
    public static Load load(
            String name, double currentA, double voltageExponent, LoadPattern pattern, String... stages) {
        return new Load(name, currentA, RATED_V, voltageExponent, 0, DropOut.never(), pattern, Set.of(stages));
    }

    /** The same load with a drop-out. */
    public static Load dropping(Load load, DropOut dropOut) {
        return new Load(
                load.name(),
                load.ratedCurrentA(),
                load.ratedVoltageV(),
                load.voltageExponent(),
                load.standbyCurrentA(),
                dropOut,
                load.pattern(),
                load.stages());
    }

    /** The same load with a standby current. */
    public static Load withStandby(Load load, double standbyCurrentA) {
        return new Load(
                load.name(),
                load.ratedCurrentA(),
                load.ratedVoltageV(),
                load.voltageExponent(),
                standbyCurrentA,
                load.dropOut(),
                load.pattern(),
                load.stages());
    }

    /** A cycle from pairs of begin and end (ms). */
    public static LoadPattern.Flashing flashing(String clock, double periodMs, double phaseMs, double... edgesMs) {
        return new LoadPattern.Flashing(
                new FlashClock(clock, periodMs),
                java.util.stream.IntStream.range(0, edgesMs.length / 2)
                        .mapToObj(i -> new OnInterval(edgesMs[2 * i], edgesMs[2 * i + 1]))
                        .toList(),
                phaseMs);
    }
}
