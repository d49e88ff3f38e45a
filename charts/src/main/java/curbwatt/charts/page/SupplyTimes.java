package curbwatt.charts.page;

import curbwatt.charts.run.RunStory;
import curbwatt.engine.control.LowVoltageCutoff;
import curbwatt.engine.event.Event;
import curbwatt.engine.load.Load;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.vehicle.BusNode;
import curbwatt.engine.vehicle.Circuit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/** When circuits had no supply and loads had fallen silent, read off the events of a run. */
final class SupplyTimes {

    private static final String NODE = "node";
    private static final String EQUIPMENT_NODE = "equipment node";

    private final RunStory story;
    private final Map<String, Outages> circuits = new HashMap<>();
    private final Map<String, Outages> loads = new HashMap<>();

    /**
     * A stretch of time.
     *
     * @param fromS start, since the scene's start (s)
     * @param toS end (s)
     */
    record Span(double fromS, double toS) {}

    /**
     * Outages of one circuit or load. Several causes may hold at once; the outage lasts until the last of them is gone.
     *
     * @param causes cause and start of those that hold (s)
     * @param spans what is over
     */
    private record Outages(Map<String, Double> causes, List<Span> spans) {

        void begin(String cause, double timeS) {
            causes.putIfAbsent(cause, timeS);
        }

        void end(String cause, double timeS) {
            double fromS = causes.values().stream()
                    .mapToDouble(Double::doubleValue)
                    .min()
                    .orElse(timeS);
            if (causes.remove(cause) != null) {
                if (causes.isEmpty()) {
                    spans.add(new Span(fromS, timeS));
                } else {
                    causes.replaceAll((other, sinceS) -> fromS);
                }
            }
        }
    }

    private SupplyTimes(RunStory story) {
        this.story = story;
    }

    /** Reads a run's events. */
    static SupplyTimes of(RunStory story) {
        SupplyTimes times = new SupplyTimes(story);
        story.result().events().forEach(times::hear);
        times.close(story.result().durationS());
        return times;
    }

    /** When a circuit had no supply. */
    List<Span> without(String circuit) {
        return spans(circuits, circuit);
    }

    /** When a load had dropped out while its circuit was fed. */
    List<Span> silent(String load) {
        return spans(loads, load);
    }

    private static List<Span> spans(Map<String, Outages> outages, String name) {
        Outages found = outages.get(name);
        return found == null ? List.of() : List.copyOf(found.spans());
    }

    private void hear(Event event) {
        String subject = event.subject();
        double timeS = event.timeS();
        switch (event.kind()) {
            case CUTOFF_TRIPPED, RUN_TIME_LIMIT_REACHED ->
                disconnected(subject).forEach(circuit -> lost(circuit, "contact", timeS));
            case CUTOFF_RECLOSED ->
                disconnected(subject).forEach(circuit -> of(circuits, circuit).end("contact", timeS));
            case FUSE_OPENED -> lost(subject, "fuse", timeS);
            case VOLTAGE_COLLAPSED -> collapsed(subject).forEach(circuit -> lost(circuit, "collapse", timeS));
            case PHASE_BEGAN -> phaseBegan(subject, timeS);
            case LOAD_DROPPED_OUT -> of(loads, subject).begin("voltage", timeS);
            case LOAD_RETURNED -> of(loads, subject).end("voltage", timeS);
            default -> {}
        }
    }

    /** A lost circuit's loads forget that they were silent. */
    private void lost(String circuit, String cause, double timeS) {
        of(circuits, circuit).begin(cause, timeS);
        vehicleCircuits()
                .filter(each -> each.name().equals(circuit))
                .flatMap(each -> each.loads().stream())
                .forEach(load -> of(loads, load.name()).end("voltage", timeS));
    }

    private void phaseBegan(String name, double timeS) {
        circuits.values().forEach(outages -> outages.end("collapse", timeS));
        Set<String> stages = story.scenario().scene().phases().stream()
                .filter(phase -> phase.name().equals(name))
                .findFirst()
                .map(Phase::stages)
                .orElse(Set.of());
        story.scenario()
                .vehicle()
                .loads()
                .filter(load -> !load.isOnIn(stages))
                .map(Load::name)
                .forEach(load -> of(loads, load).end("voltage", timeS));
    }

    private void close(double endS) {
        for (Map<String, Outages> all : List.of(circuits, loads)) {
            all.values()
                    .forEach(outages ->
                            List.copyOf(outages.causes().keySet()).forEach(cause -> outages.end(cause, endS)));
        }
    }

    private Set<String> disconnected(String cutoff) {
        return story.scenario().vehicle().cutoffs().stream()
                .filter(device -> device.name().equals(cutoff))
                .findFirst()
                .map(LowVoltageCutoff::circuits)
                .orElse(Set.of());
    }

    private List<String> collapsed(String place) {
        return vehicleCircuits()
                .filter(circuit -> switch (place) {
                    case NODE -> circuit.node() == BusNode.STARTER;
                    case EQUIPMENT_NODE -> circuit.node() == BusNode.EQUIPMENT;
                    default -> circuit.name().equals(place);
                })
                .map(Circuit::name)
                .toList();
    }

    private Stream<Circuit> vehicleCircuits() {
        return story.scenario().vehicle().circuits().stream();
    }

    private static Outages of(Map<String, Outages> all, String name) {
        return all.computeIfAbsent(name, key -> new Outages(new HashMap<>(), new ArrayList<>()));
    }
}
