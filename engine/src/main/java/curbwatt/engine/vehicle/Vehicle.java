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
 * A vehicle's 12 V system: the starter node with battery, alternator and starter, and, where there is an auxiliary
 * battery,
 * the equipment node behind a link. Circuits hang on either.
 *
 * @param name as the user calls it
 * @param battery the starter battery
 * @param auxiliary the auxiliary battery and its link, if there is one
 * @param alternator the charging source, if there is one
 * @param circuits feeds with their loads; names of circuits and of loads are unique
 * @param cutoffs monitors that disconnect circuits; no circuit belongs to two
 * @param starting starter and what is asked of it
 * @param engine what acts on the engine, and what its running costs
 */
public record Vehicle(
        String name,
        BatteryInstallation battery,
        Optional<AuxiliaryBattery> auxiliary,
        Optional<Alternator> alternator,
        List<Circuit> circuits,
        List<LowVoltageCutoff> cutoffs,
        StartingSystem starting,
        EngineEquipment engine) {

    /** A vehicle with one battery, on whose engine nothing acts. */
    public Vehicle(
            String name,
            BatteryInstallation battery,
            Optional<Alternator> alternator,
            List<Circuit> circuits,
            List<LowVoltageCutoff> cutoffs,
            StartingSystem starting) {
        this(name, battery, Optional.empty(), alternator, circuits, cutoffs, starting, EngineEquipment.none());
    }

    /** A vehicle on whose engine nothing acts. */
    public Vehicle(
            String name,
            BatteryInstallation battery,
            Optional<AuxiliaryBattery> auxiliary,
            Optional<Alternator> alternator,
            List<Circuit> circuits,
            List<LowVoltageCutoff> cutoffs,
            StartingSystem starting) {
        this(name, battery, auxiliary, alternator, circuits, cutoffs, starting, EngineEquipment.none());
    }

    /** Refuses names used twice, cutoffs on unknown circuits, and one clock with two periods. */
    public Vehicle {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(battery, "battery");
        Objects.requireNonNull(auxiliary, "auxiliary");
        Objects.requireNonNull(alternator, "alternator");
        circuits = List.copyOf(circuits);
        cutoffs = List.copyOf(cutoffs);
        Objects.requireNonNull(starting, "starting");
        Objects.requireNonNull(engine, "engine");
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
        requireEquipmentNode(auxiliary, circuits, cutoffs);
    }

    /** The same vehicle with other circuits. */
    public Vehicle withCircuits(List<Circuit> others) {
        return new Vehicle(name, battery, auxiliary, alternator, others, cutoffs, starting, engine);
    }

    /** The same vehicle with other cutoffs. */
    public Vehicle withCutoffs(List<LowVoltageCutoff> others) {
        return new Vehicle(name, battery, auxiliary, alternator, circuits, others, starting, engine);
    }

    /** The same vehicle with another starter battery. */
    public Vehicle withBattery(BatteryInstallation other) {
        return new Vehicle(name, other, auxiliary, alternator, circuits, cutoffs, starting, engine);
    }

    /** The same vehicle with another auxiliary battery, or none. */
    public Vehicle withAuxiliary(Optional<AuxiliaryBattery> other) {
        return new Vehicle(name, battery, other, alternator, circuits, cutoffs, starting, engine);
    }

    /** The same vehicle with another alternator, or none. */
    public Vehicle withAlternator(Optional<Alternator> other) {
        return new Vehicle(name, battery, auxiliary, other, circuits, cutoffs, starting, engine);
    }

    /** The same vehicle with other things that act on its engine. */
    public Vehicle withEngine(EngineEquipment other) {
        return new Vehicle(name, battery, auxiliary, alternator, circuits, cutoffs, starting, other);
    }

    /** All loads, circuit by circuit. */
    public Stream<Load> loads() {
        return circuits.stream().flatMap(circuit -> circuit.loads().stream());
    }

    private static void requireEquipmentNode(
            Optional<AuxiliaryBattery> auxiliary, List<Circuit> circuits, List<LowVoltageCutoff> cutoffs) {
        if (auxiliary.isPresent()) {
            return;
        }
        for (Circuit circuit : circuits) {
            if (circuit.node() == BusNode.EQUIPMENT) {
                throw new IllegalArgumentException("circuit '" + circuit.name()
                        + "' hangs on the equipment node; without an auxiliary battery there is none");
            }
        }
        for (LowVoltageCutoff cutoff : cutoffs) {
            if (cutoff.sense() instanceof SensePoint.EquipmentNode) {
                throw new IllegalArgumentException("cutoff '" + cutoff.name()
                        + "' senses at the equipment node; without an auxiliary battery there is none");
            }
        }
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
