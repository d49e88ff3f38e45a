package curbwatt.charts.wording;

import curbwatt.charts.run.RunStory;
import curbwatt.engine.control.LowVoltageCutoff;
import curbwatt.engine.event.Event;
import curbwatt.engine.load.Load;
import curbwatt.engine.result.TraceRow;
import curbwatt.engine.vehicle.BusNode;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.vehicle.Vehicle;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Which battery is meant: "the battery" where there is one, "the starter battery" or "the auxiliary battery" where
 * there
 * are two.
 *
 * @param story the run
 */
public record BatteryText(RunStory story) {

    /** The one that feeds the equipment where there are two. */
    static final String AUXILIARY = "the auxiliary battery";

    /** Whether the vehicle has two. */
    public boolean isPair() {
        return vehicle().auxiliary().isPresent();
    }

    /** The one that cranks. */
    String starter() {
        return isPair() ? "the starter battery" : "the battery";
    }

    /** All of them as the subject of a sentence, for the verb see {@link #verb}. */
    String all() {
        return isPair() ? "the batteries" : "the battery";
    }

    /** A verb in the number of {@link #all}. */
    String verb(String one, String several) {
        return isPair() ? several : one;
    }

    /** "with 71 % charge left", or which battery it is left in. */
    String left(Event event) {
        if (!isPair()) {
            return "with " + PlainText.percent(event.stateOfChargeFraction()) + " charge left";
        }
        OptionalDouble auxiliary =
                isBehindLink(event.subject()) ? auxiliaryFraction(event.timeS()) : OptionalDouble.empty();
        return auxiliary.isPresent()
                ? "with " + PlainText.percent(auxiliary.getAsDouble()) + " left in the auxiliary battery"
                : "with " + PlainText.percent(event.stateOfChargeFraction()) + " left in the starter battery";
    }

    /**
     * Charge of the auxiliary battery at an instant, straight between two lines of the trace; empty if there is none.
     */
    public OptionalDouble auxiliaryFraction(double timeS) {
        List<TraceRow> rows = story.trace().rows();
        if (!isPair() || rows.isEmpty()) {
            return OptionalDouble.empty();
        }
        TraceRow before = rows.get(0);
        for (TraceRow row : rows) {
            if (row.timeS() >= timeS) {
                double lengthS = row.timeS() - before.timeS();
                double share = lengthS > 0 ? (timeS - before.timeS()) / lengthS : 1;
                return OptionalDouble.of(auxiliary(before) + share * (auxiliary(row) - auxiliary(before)));
            }
            before = row;
        }
        return OptionalDouble.of(auxiliary(before));
    }

    /**
     * Whether what goes by a name is fed by the auxiliary battery: a circuit, a load, or a cutoff of such circuits
     * alone.
     */
    boolean isBehindLink(String subject) {
        if (subject.equals(Places.EQUIPMENT_NODE)) {
            return true;
        }
        for (Circuit circuit : vehicle().circuits()) {
            boolean named = circuit.name().equals(subject)
                    || circuit.loads().stream().map(Load::name).anyMatch(subject::equals);
            if (named) {
                return circuit.node() == BusNode.EQUIPMENT;
            }
        }
        Optional<LowVoltageCutoff> cutoff = vehicle().cutoffs().stream()
                .filter(each -> each.name().equals(subject))
                .findFirst();
        return cutoff.isPresent()
                && vehicle().circuits().stream()
                        .filter(circuit -> cutoff.get().circuits().contains(circuit.name()))
                        .allMatch(circuit -> circuit.node() == BusNode.EQUIPMENT);
    }

    private static double auxiliary(TraceRow row) {
        return row.equipment().orElseThrow().stateOfChargeFraction();
    }

    private Vehicle vehicle() {
        return story.scenario().vehicle();
    }
}
