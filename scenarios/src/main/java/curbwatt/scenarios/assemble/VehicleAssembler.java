package curbwatt.scenarios.assemble;

import curbwatt.engine.powertrain.CrankingLimit;
import curbwatt.engine.powertrain.Starter;
import curbwatt.engine.vehicle.BatteryInstallation;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.vehicle.StartingSystem;
import curbwatt.engine.vehicle.Vehicle;
import curbwatt.scenarios.check.LabelFits;
import curbwatt.scenarios.file.BatteryEntry;
import curbwatt.scenarios.file.StartEntry;
import curbwatt.scenarios.file.StarterEntry;
import curbwatt.scenarios.file.VehicleEntry;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * From a complete entry to a vehicle.
 *
 * @param guarded catches what the engine refuses
 * @param assumptions told of what is taken although the file does not say it
 * @param fits fits labels
 */
record VehicleAssembler(Guarded guarded, Assumptions assumptions, LabelFits fits) {
    private static final double USUAL_CRANKING_S = 3;

    /** Returns the vehicle, its auxiliary battery charged as the scene's start says. */
    Vehicle vehicle(VehicleEntry entry, Optional<StartEntry> start) {
        BatteryAssembler battery = new BatteryAssembler(guarded, assumptions, fits);
        AuxiliaryAssembler auxiliary = new AuxiliaryAssembler(guarded, battery);
        AlternatorAssembler alternator = new AlternatorAssembler(guarded, assumptions);
        CircuitAssembler assembler = new CircuitAssembler(guarded);
        CutoffAssembler cutoffs = new CutoffAssembler(guarded);
        List<Circuit> circuits =
                entry.circuits().stream().map(assembler::circuit).toList();
        assumptions.noFeed(entry.circuits().stream()
                .filter(circuit -> circuit.feed().isEmpty())
                .map(circuit -> circuit.name().orElseThrow())
                .toList());
        assumptions.noBehaviour(entry.circuits().stream()
                .flatMap(circuit -> circuit.loads().stream())
                .filter(load ->
                        load.behaviour().isEmpty() && load.voltageExponent().isEmpty())
                .map(load -> load.name().orElseThrow())
                .toList());
        return guarded.build(
                entry.place(),
                () -> new Vehicle(
                        entry.name().orElseThrow(),
                        starterBattery(battery, entry),
                        entry.auxiliary().map(second -> auxiliary.auxiliary(second, start)),
                        entry.alternator().map(alternator::alternator),
                        circuits,
                        entry.cutoffs().stream()
                                .flatMap(cutoff -> cutoffs.devices(cutoff).stream())
                                .toList(),
                        starting(entry.starter().orElseThrow()),
                        new EngineAssembler(guarded, assumptions).equipment(entry)));
    }

    private static BatteryInstallation starterBattery(BatteryAssembler batteries, VehicleEntry entry) {
        BatteryEntry battery = entry.battery().orElseThrow();
        return entry.auxiliary().isPresent()
                ? batteries.installation("starter battery", "starter battery", battery)
                : batteries.installation("battery", battery.part().orElse("battery"), battery);
    }

    private StartingSystem starting(StarterEntry entry) {
        if (entry.minimumCrankingV().isEmpty()) {
            assumptions.add(
                    "The engine is taken to start at the published minimum of the half-rating load test by temperature:"
                            + " 9.6 V at 21 °C to 8.5 V at -18 °C.");
        }
        return guarded.build(
                entry.place(),
                () -> new StartingSystem(
                        new Starter(
                                entry.inrushA().orElse(0.0),
                                entry.inrushS().orElse(0.0),
                                entry.crankingA().orElseThrow(),
                                entry.crankingS().orElse(USUAL_CRANKING_S),
                                entry.coldFactor().orElse(Starter.USUAL_COLD_FACTOR)),
                        new CrankingLimit(optional(entry.minimumCrankingV())),
                        entry.loadsStayOn().orElse(true)));
    }

    private static OptionalDouble optional(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }
}
