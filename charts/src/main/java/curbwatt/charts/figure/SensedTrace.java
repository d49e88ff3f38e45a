package curbwatt.charts.figure;

import curbwatt.charts.style.Palette;
import curbwatt.engine.control.SensePoint;
import curbwatt.engine.result.SensedSample;
import curbwatt.engine.result.TraceRow;
import curbwatt.engine.vehicle.Vehicle;
import java.util.ArrayList;
import java.util.List;

/**
 * Voltage at the end of a feed at which a cutoff senses. Those that sense at a node have the node's own line.
 *
 * @param circuit circuit at whose end it is
 * @param place place of the first cutoff that senses there, in the vehicle
 * @param range colour of the range
 */
record SensedTrace(String circuit, int place, Palette range) {

    /** Each feed end once, in the order of the cutoffs. */
    static List<SensedTrace> of(Vehicle vehicle) {
        List<SensedTrace> traces = new ArrayList<>();
        for (int i = 0; i < vehicle.cutoffs().size(); i++) {
            if (vehicle.cutoffs().get(i).sense() instanceof SensePoint.FeedEnd end
                    && traces.stream().noneMatch(trace -> trace.circuit().equals(end.circuit()))) {
                traces.add(new SensedTrace(
                        end.circuit(), i, traces.size() % 2 == 0 ? Palette.SENSED_RANGE : Palette.SENSED_OTHER_RANGE));
            }
        }
        return traces;
    }

    double lowestV(TraceRow row) {
        return sample(row).lowestV();
    }

    double highestV(TraceRow row) {
        return sample(row).highestV();
    }

    Head.Key key() {
        return Head.Key.area("sensed at the end of " + circuit, range.color());
    }

    private SensedSample sample(TraceRow row) {
        return row.sensed().get(place);
    }
}
