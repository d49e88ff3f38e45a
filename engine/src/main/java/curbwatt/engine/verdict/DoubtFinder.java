package curbwatt.engine.verdict;

import curbwatt.engine.control.LowVoltageCutoff;
import curbwatt.engine.control.SensePoint;
import curbwatt.engine.event.Event;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.result.BatterySummary;
import curbwatt.engine.result.CircuitSummary;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.vehicle.Vehicle;
import java.util.ArrayList;
import java.util.List;

/** Looks for what a reader of a run's figures must know before trusting them. */
final class DoubtFinder {

    /** Usual error of a voltage monitor (V); common practice, no published source. */
    private static final double SENSOR_ERROR_V = 0.1;

    private static final double DEEP_FRACTION = 0.5;
    private static final double COLDEST_C = -20;
    private static final double HOTTEST_C = 50;
    private static final int CHATTER_TRIPS = 3;
    private static final double CHATTER_S = 3600;

    private final Vehicle vehicle;
    private final Scene scene;
    private final RunResult result;
    private final List<Doubt> doubts = new ArrayList<>();

    DoubtFinder(Vehicle vehicle, Scene scene, RunResult result) {
        this.vehicle = vehicle;
        this.scene = scene;
        this.result = result;
    }

    List<Doubt> find() {
        String battery = vehicle.battery().name();
        result.events().stream()
                .filter(event -> event.kind() == EventKind.VOLTAGE_COLLAPSED)
                .map(Event::subject)
                .distinct()
                .forEach(subject -> add(true, Doubt.Kind.VOLTAGE_COLLAPSED, subject));
        vehicle.alternator()
                .ifPresent(alternator -> scene.phases().stream()
                        .filter(phase -> phase.mode().isRunning()
                                && !alternator.isTrustedAt(phase.speed().lowestRpm()))
                        .forEach(phase -> add(true, Doubt.Kind.ALTERNATOR_NEAR_CUT_IN, phase.name())));
        for (LowVoltageCutoff cutoff : vehicle.cutoffs()) {
            long trips = trips(cutoff);
            add(
                    trips == 0 && lowestSensedV(cutoff) < cutoff.tripV() + SENSOR_ERROR_V,
                    Doubt.Kind.NEAR_TRIP,
                    cutoff.name());
            add(chatters(cutoff), Doubt.Kind.CUTOFF_CHATTERS, cutoff.name());
        }
        for (BatterySummary summary : result.batteries()) {
            add(summary.smallestFreezingMarginK() < 0, Doubt.Kind.ELECTROLYTE_MAY_FREEZE, summary.battery());
        }
        add(
                scene.phases().stream().mapToDouble(Phase::airC).anyMatch(airC -> airC < COLDEST_C || airC > HOTTEST_C),
                Doubt.Kind.TEMPERATURE_OUT_OF_MODEL,
                battery);
        for (BatterySummary summary : result.batteries()) {
            boolean lead = Double.isFinite(summary.smallestFreezingMarginK());
            add(lead && summary.lowestChargeFraction() < DEEP_FRACTION, Doubt.Kind.DEEP_DISCHARGE, summary.battery());
        }
        return doubts;
    }

    private void add(boolean applies, Doubt.Kind kind, String subject) {
        if (applies) {
            doubts.add(new Doubt(kind, subject));
        }
    }

    private long trips(LowVoltageCutoff cutoff) {
        return result.events().stream()
                .filter(event -> event.kind() == EventKind.CUTOFF_TRIPPED
                        && event.subject().equals(cutoff.name()))
                .count();
    }

    private double lowestSensedV(LowVoltageCutoff cutoff) {
        if (cutoff.sense() instanceof SensePoint.EquipmentNode) {
            return result.batteries().get(1).lowestV();
        }
        return cutoff.sense() instanceof SensePoint.FeedEnd end
                ? result.circuits().stream()
                        .filter(circuit -> circuit.circuit().equals(end.circuit()))
                        .mapToDouble(CircuitSummary::lowestV)
                        .findFirst()
                        .orElseThrow()
                : result.lowestV();
    }

    private boolean chatters(LowVoltageCutoff cutoff) {
        List<Double> tripTimes = result.events().stream()
                .filter(event -> event.kind() == EventKind.CUTOFF_TRIPPED
                        && event.subject().equals(cutoff.name()))
                .map(Event::timeS)
                .toList();
        for (int i = CHATTER_TRIPS - 1; i < tripTimes.size(); i++) {
            if (tripTimes.get(i) - tripTimes.get(i - CHATTER_TRIPS + 1) < CHATTER_S) {
                return true;
            }
        }
        return false;
    }
}
