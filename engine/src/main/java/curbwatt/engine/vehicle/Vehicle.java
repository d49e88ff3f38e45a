package curbwatt.engine.vehicle;

import curbwatt.engine.alternator.Alternator;
import curbwatt.engine.control.LowVoltageCutoff;
import curbwatt.engine.control.SensePoint;
import curbwatt.engine.load.Load;
import curbwatt.engine.load.LoadPattern;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A vehicle's 12 V system as one node: battery, alternator, starter and the feeds of the circuits meet there.
 *
 * @param name as the user calls it
 * @param battery the battery on the node
 * @param alternator the charging source, if there is one
 * @param circuits feeds with their loads; names of circuits and of loads are unique
 * @param cutoffs monitors that disconnect circuits; no circuit belongs to two
 * @param starting starter and what is asked of it
 */
public record Vehicle(
        String name,
        BatteryInstallation battery,
        Optional<Alternator> alternator,
        List<Circuit> circuits,
        List<LowVoltageCutoff> cutoffs,
        StartingSystem starting) {

    /** Refuses names used twice, cutoffs on unknown circuits, and one clock with two periods. */
    public Vehicle {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(battery, "battery");
        Objects.requireNonNull(alternator, "alternator");
        circuits = List.copyOf(circuits);
        cutoffs = List.copyOf(cutoffs);
        Objects.requireNonNull(starting, "starting");
        Set<String> circuitNames = unique("circuit", circuits.stream().map(Circuit::name));
        unique(
                "load",
                circuits.stream().flatMap(circuit -> circuit.loads().stream()).map(Load::name));
        unique("cutoff", cutoffs.stream().map(LowVoltageCutoff::name));
        unique("cutoff circuit", cutoffs.stream().flatMap(cutoff -> cutoff.circuits().stream()));
        for (LowVoltageCutoff cutoff : cutoffs) {
            cutoff.circuits().forEach(circuit -> requireKnown(circuitNames, circuit, cutoff.name()));
            if (cutoff.sense() instanceof SensePoint.FeedEnd end) {
                requireKnown(circuitNames, end.circuit(), cutoff.name());
            }
        }
        requireOnePeriodPerClock(circuits);
    }

    /** All loads, circuit by circuit. */
    public Stream<Load> loads() {
        return circuits.stream().flatMap(circuit -> circuit.loads().stream());
    }

    private static Set<String> unique(String what, Stream<String> names) {
        Set<String> seen = new HashSet<>();
        names.forEach(name -> {
            if (!seen.add(name)) {
                throw new IllegalArgumentException(what + " '" + name + "' stands twice; each needs a name of its own");
            }
        });
        return seen;
    }

    private static void requireKnown(Set<String> circuitNames, String circuit, String cutoff) {
        if (!circuitNames.contains(circuit)) {
            throw new IllegalArgumentException("cutoff '" + cutoff + "' names circuit '" + circuit + "'; there are "
                    + circuitNames.stream().sorted().toList());
        }
    }

    private static void requireOnePeriodPerClock(List<Circuit> circuits) {
        Map<String, Double> periods = new HashMap<>();
        circuits.stream()
                .flatMap(circuit -> circuit.loads().stream())
                .map(Load::pattern)
                .filter(LoadPattern.Flashing.class::isInstance)
                .map(pattern -> ((LoadPattern.Flashing) pattern).clock())
                .forEach(clock -> {
                    Double other = periods.putIfAbsent(clock.name(), clock.periodMs());
                    if (other != null && other != clock.periodMs()) {
                        throw new IllegalArgumentException("clock '" + clock.name() + "' has two periods: " + other
                                + " and " + clock.periodMs() + " ms");
                    }
                });
    }
}
