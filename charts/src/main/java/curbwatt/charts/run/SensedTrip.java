package curbwatt.charts.run;

import curbwatt.engine.control.LowVoltageCutoff;
import curbwatt.engine.control.SensePoint;
import curbwatt.engine.event.Event;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.result.EquipmentSample;
import curbwatt.engine.result.TraceRow;
import curbwatt.engine.vehicle.BusNode;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A cutoff's first trip, where it senses elsewhere than at the starter battery: the lowest voltages between the
 * trace's line
 * before the trip and the line before that. Lowest against lowest, because flashing pulls both down together.
 *
 * @param cutoff the cutoff
 * @param tripS when it tripped (s)
 * @param sensedMinV lowest voltage at its sense point (V)
 * @param starterMinV lowest voltage of the starter node (V)
 * @param equipmentMinV lowest voltage of the equipment node (V); empty: there is none
 * @param feedsFromEquipment whether the battery that feeds its circuits is the auxiliary one
 */
public record SensedTrip(
        LowVoltageCutoff cutoff,
        double tripS,
        double sensedMinV,
        double starterMinV,
        OptionalDouble equipmentMinV,
        boolean feedsFromEquipment) {

    /** How far the battery that feeds the cutoff's circuits stands above the sense point (V). */
    public double apartV() {
        return (feedsFromEquipment ? equipmentMinV.orElseThrow() : starterMinV) - sensedMinV;
    }

    /** The first trips of a run's cutoffs that sense elsewhere, as far as the trace tells what they sensed. */
    public static List<SensedTrip> of(RunStory story) {
        List<SensedTrip> trips = new ArrayList<>();
        List<LowVoltageCutoff> cutoffs = story.scenario().vehicle().cutoffs();
        for (int i = 0; i < cutoffs.size(); i++) {
            LowVoltageCutoff cutoff = cutoffs.get(i);
            boolean atEquipmentNode = cutoff.sense() instanceof SensePoint.EquipmentNode;
            if (atEquipmentNode || cutoff.sense() instanceof SensePoint.FeedEnd) {
                int place = i;
                story.result().events().stream()
                        .filter(event -> event.kind() == EventKind.CUTOFF_TRIPPED
                                && event.subject().equals(cutoff.name()))
                        .findFirst()
                        .ifPresent(trip -> trips.add(of(place, trip, story)));
            }
        }
        return trips;
    }

    private static SensedTrip of(int place, Event trip, RunStory story) {
        LowVoltageCutoff cutoff = story.scenario().vehicle().cutoffs().get(place);
        TraceRow row = story.trace().rows().get(0);
        for (TraceRow next : story.trace().rows()) {
            row = next.timeS() <= trip.timeS() ? next : row;
        }
        OptionalDouble equipmentV =
                row.equipment().stream().mapToDouble(EquipmentSample::nodeMinV).findFirst();
        return new SensedTrip(
                cutoff,
                trip.timeS(),
                row.sensed().get(place).lowestV(),
                row.nodeMinV(),
                equipmentV,
                feedsFromEquipment(cutoff, story));
    }

    private static boolean feedsFromEquipment(LowVoltageCutoff cutoff, RunStory story) {
        return story.scenario().vehicle().circuits().stream()
                .filter(circuit -> cutoff.circuits().contains(circuit.name()))
                .allMatch(circuit -> circuit.node() == BusNode.EQUIPMENT);
    }
}
