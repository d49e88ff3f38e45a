package curbwatt.engine.days;

import curbwatt.engine.load.Inrush;
import curbwatt.engine.load.Load;
import curbwatt.engine.load.LoadPattern;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.vehicle.Vehicle;
import java.util.List;
import java.util.stream.Stream;

/**
 * The same vehicle without flashing, duty and inrush: each such load draws its mean all the time.
 *
 * <p>What that changes: nothing in the charge drawn by loads whose current does not depend on the voltage; little for
 * the others, which see the mean voltage instead of the voltage of each flash. Heat in feeds and in the battery's
 * resistance is that of the mean current, lower than the mean of the heat. Whatever looks at the voltage sees its mean and
 * not its swing: a cutoff without filter and delay trips on the dips, earlier than here; one that asks for a delay without
 * a break begins anew with every pause, and trips later than here. Where the voltage falls slowly, that is up to an hour.
 */
public final class SteadyLoads {

    private SteadyLoads() {}

    /** The vehicle with steady loads; one that has none but steady loads comes back equal. */
    public static Vehicle of(Vehicle vehicle) {
        return vehicle.withCircuits(
                vehicle.circuits().stream().map(SteadyLoads::steady).toList());
    }

    private static Circuit steady(Circuit circuit) {
        List<Load> loads = circuit.loads().stream().flatMap(SteadyLoads::steady).toList();
        return circuit.withLoads(loads);
    }

    /** Its lit share follows the voltage as the load does; what it draws between does not, and stands beside it. */
    private static Stream<Load> steady(Load load) {
        if (load.pattern() instanceof LoadPattern.Continuous && !load.inrush().isPossible()) {
            return Stream.of(load);
        }
        double betweenA = (1 - load.pattern().onFraction()) * load.betweenCurrentA();
        double litA = load.meanCurrentA(load.ratedVoltageV()) - betweenA;
        Load lit = steady(load, load.name(), litA, load.voltageExponent(), load.standbyCurrentA());
        return betweenA == 0 ? Stream.of(lit) : Stream.of(lit, steady(load, load.name() + ", between", betweenA, 0, 0));
    }

    private static Load steady(
            Load load, String name, double currentA, double voltageExponent, double standbyCurrentA) {
        return new Load(
                name,
                currentA,
                load.ratedVoltageV(),
                voltageExponent,
                standbyCurrentA,
                load.dropOut(),
                new LoadPattern.Continuous(),
                load.stages(),
                Inrush.none(),
                load.heads());
    }
}
