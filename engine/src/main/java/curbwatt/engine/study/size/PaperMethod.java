package curbwatt.engine.study.size;

import curbwatt.engine.battery.Battery;
import curbwatt.engine.battery.Chemistry;
import curbwatt.engine.battery.label.LabelTest;
import curbwatt.engine.budget.LoadBudget;
import curbwatt.engine.control.LowVoltageCutoff;
import curbwatt.engine.load.Load;
import curbwatt.engine.scene.AirTemperature;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.sizing.CapacityFactor;
import curbwatt.engine.sizing.DutyPeriod;
import curbwatt.engine.sizing.SectionSizing;
import curbwatt.engine.sizing.SizingFactors;
import curbwatt.engine.sizing.TemperatureCorrection;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.vehicle.Vehicle;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;

/**
 * The paper method of IEEE 485 on a scene's duty: mean currents of the labels, the battery's own discharge table, and
 * factors for cold, growth and age. It knows no flashing, no recovery, no cutoff and no restart.
 *
 * @param simulation the vehicle in the scene, in the stated conditions
 * @param seat the battery that is sized
 * @param circuits circuits that are to be held
 * @param untilS how long they are to be held (s)
 */
record PaperMethod(Simulation simulation, Seat seat, Set<String> circuits, double untilS) {

    private static final double REFERENCE_C = 25;
    private static final double IRON_PHOSPHATE_END_V = 10;
    private static final double SHORTEST_S = 1;

    /** The size; empty if the battery carries nothing in the scene. */
    Optional<PaperSize> size(Conditions stated, double marginFactor) {
        List<DutyPeriod> cycle = cycle();
        if (cycle.stream().allMatch(period -> period.currentA() == 0)) {
            return Optional.empty();
        }
        Battery battery = Battery.asNew(seat.in(simulation.vehicle()).battery().parameters());
        boolean isLead = battery.parameters().chemistry() != Chemistry.LFP;
        double endV = isLead ? LabelTest.TWENTY_HOURS.endV() : IRON_PHOSPHATE_END_V;
        double tripV = Math.max(endV, tripV());
        double lowestC = lowestC();
        return Optional.of(new PaperSize(
                cycle,
                endV,
                SectionSizing.of(cycle, new CapacityFactor.Modelled(battery, REFERENCE_C, endV)),
                new SizingFactors(
                        isLead ? TemperatureCorrection.withoutCredit(lowestC) : 1,
                        marginFactor,
                        Math.max(1, 1 / stated.capacityHealthFraction())),
                lowestC,
                tripV,
                atTripAh(cycle, battery, tripV)));
    }

    private static OptionalDouble atTripAh(List<DutyPeriod> cycle, Battery battery, double tripV) {
        if (tripV >= battery.at(REFERENCE_C).restVoltageV(1)) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(SectionSizing.of(cycle, new CapacityFactor.Modelled(battery, REFERENCE_C, tripV))
                .uncorrectedAh());
    }

    private List<DutyPeriod> cycle() {
        Scene scene = simulation.scene();
        List<DutyPeriod> cycle = new ArrayList<>();
        double fromS = 0;
        for (Phase phase : scene.phases()) {
            double lengthS = Math.min(phase.durationS(), untilS - fromS);
            if (lengthS < SHORTEST_S) {
                break;
            }
            append(cycle, new DutyPeriod(meanA(phase), lengthS));
            fromS += phase.durationS();
        }
        return List.copyOf(cycle);
    }

    /** Two periods of one current are one. */
    private static void append(List<DutyPeriod> cycle, DutyPeriod period) {
        int last = cycle.size() - 1;
        if (last >= 0 && cycle.get(last).currentA() == period.currentA()) {
            double lengthS = cycle.get(last).durationS() + period.durationS();
            cycle.set(last, new DutyPeriod(period.currentA(), lengthS));
        } else {
            cycle.add(period);
        }
    }

    /** What the battery carries on average: with the engine running, what is beyond the alternator. */
    private double meanA(Phase phase) {
        Vehicle vehicle = simulation.vehicle();
        LoadBudget budget = LoadBudget.of(vehicle, phase);
        Set<String> fed = vehicle.circuits().stream()
                .filter(seat::feeds)
                .map(Circuit::name)
                .collect(Collectors.toSet());
        double demandA = budget.lines().stream()
                .filter(line -> fed.contains(line.circuit()))
                .mapToDouble(LoadBudget.Line::meanA)
                .sum();
        return phase.mode().isRunning() && vehicle.alternator().isPresent()
                ? Math.min(
                        demandA,
                        Math.max(0, budget.meanA() - budget.alternatorA().orElse(0)))
                : demandA;
    }

    private double lowestC() {
        Scene scene = simulation.scene();
        return DoubleStream.concat(
                        DoubleStream.of(scene.start().batteryC()),
                        scene.phases().stream()
                                .flatMap(phase -> phase.air().points().stream())
                                .mapToDouble(AirTemperature.Point::airC))
                .min()
                .orElseThrow();
    }

    private double tripV() {
        DoubleStream trips = simulation.vehicle().cutoffs().stream()
                .filter(cutoff -> !Collections.disjoint(cutoff.circuits(), circuits))
                .mapToDouble(LowVoltageCutoff::tripV);
        DoubleStream dropOuts = simulation.vehicle().circuits().stream()
                .filter(circuit -> circuits.contains(circuit.name()))
                .flatMap(circuit -> circuit.loads().stream())
                .map(Load::dropOut)
                .mapToDouble(dropOut -> dropOut.levelV());
        return DoubleStream.concat(trips, dropOuts).max().orElse(0);
    }
}
