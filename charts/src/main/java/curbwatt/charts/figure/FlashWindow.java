package curbwatt.charts.figure;

import curbwatt.charts.run.RunStory;
import curbwatt.charts.style.Palette;
import curbwatt.engine.control.LowVoltageCutoff;
import curbwatt.engine.control.SensePoint;
import curbwatt.engine.event.Event;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.result.WaveformPoint;
import curbwatt.engine.vehicle.BusNode;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.vehicle.Vehicle;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/** A few flash cycles with what can be read off them. */
final class FlashWindow {

    /** A reading nearer to the sensed voltage than this is the same line (V). */
    private static final double SAME_V = 0.002;

    /** Trips of the run and of the close-up nearer to each other than this are the same (s). */
    private static final double SAME_TRIP_S = 0.02;

    private final List<WaveformPoint> points;
    private final Vehicle vehicle;
    private final Optional<LowVoltageCutoff> cutoff;
    private final OptionalDouble tripS;
    private final BusNode node;
    private final List<WaveformPoint> flashing;

    FlashWindow(RunStory story) {
        this.points = story.waveform();
        this.vehicle = story.scenario().vehicle();
        this.node = story.closeUpNode();
        this.cutoff = vehicle.cutoffs().stream().findFirst();
        this.tripS = story.result().events().stream()
                .filter(event -> event.kind() == EventKind.CUTOFF_TRIPPED)
                .mapToDouble(Event::timeS)
                .filter(timeS -> timeS > startS() && timeS <= endS())
                .findFirst();
        // What comes after the contact has opened is no flash; the close-up's own trip may come a moment before the
        // run's.
        List<WaveformPoint> before = points.stream()
                .filter(point -> tripS.isEmpty() || point.timeS() < tripS.getAsDouble() - SAME_TRIP_S)
                .toList();
        this.flashing = before.isEmpty() ? points : before;
    }

    List<WaveformPoint> points() {
        return points;
    }

    double startS() {
        return points.get(0).timeS();
    }

    double endS() {
        return points.get(points.size() - 1).timeS();
    }

    /** The first cutoff, whose voltages the points hold. */
    Optional<LowVoltageCutoff> cutoff() {
        return cutoff;
    }

    /** Trip levels of all cutoffs. */
    List<Levels.Level> trips() {
        return Levels.trips(vehicle);
    }

    /** The voltage that the picture is about (V): that of the node that flashing moves. */
    ToDoubleFunction<WaveformPoint> nodeV() {
        return point -> RunStory.nodeV(point, node);
    }

    /** Which node that is. */
    String node() {
        if (vehicle.auxiliary().isEmpty()) {
            return "Battery node";
        }
        return node == BusNode.EQUIPMENT ? "Equipment node" : "Starter node";
    }

    /** Its colour. */
    Palette color() {
        return node == BusNode.EQUIPMENT ? Palette.EQUIPMENT : Palette.VOLTAGE;
    }

    private Optional<Circuit> feedEnd() {
        String end = cutoff.map(LowVoltageCutoff::sense)
                .map(sense -> sense instanceof SensePoint.FeedEnd feed ? feed.circuit() : null)
                .orElse("");
        return vehicle.circuits().stream()
                .filter(circuit -> circuit.name().equals(end))
                .findFirst();
    }

    /** When a contact opens within the window (s). */
    OptionalDouble tripS() {
        return tripS;
    }

    /** Circuit at the end of whose feed the first cutoff senses. */
    Optional<String> sensedCircuit() {
        return feedEnd().map(Circuit::name);
    }

    /** Whether filter or sensor error part the reading from the sensed voltage. */
    boolean hasOwnReading() {
        return cutoff.isPresent()
                && points.stream().anyMatch(point -> Math.abs(point.readingV() - point.sensedV()) > SAME_V);
    }

    /** Lowest value while it flashes. */
    double lowest(ToDoubleFunction<WaveformPoint> value) {
        return flashing.stream().mapToDouble(value).min().orElseThrow();
    }

    /** Highest value while it flashes. */
    double highest(ToDoubleFunction<WaveformPoint> value) {
        return flashing.stream().mapToDouble(value).max().orElseThrow();
    }

    /** How far the node voltage falls from its highest to its lowest while it flashes (V). */
    double sagV() {
        return highest(nodeV()) - lowest(nodeV());
    }
}
