package curbwatt.scenarios.assemble;

import curbwatt.engine.alternator.Alternator;
import curbwatt.engine.budget.LoadBudget;
import curbwatt.engine.load.Load;
import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.vehicle.Vehicle;
import curbwatt.scenarios.check.Findings;
import curbwatt.scenarios.file.CutoffEntry;
import curbwatt.scenarios.file.Place;
import curbwatt.scenarios.file.RequirementsEntry;
import curbwatt.scenarios.file.ScenarioFile;
import curbwatt.scenarios.file.VehicleEntry;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Warnings about figures that are possible but that the trade would look at twice, each with its basis.
 *
 * @param file the file, for places
 * @param findings told of them
 */
record TradeDoubts(ScenarioFile file, Findings findings) {
    private static final double NOMINAL_V = 12.8;
    private static final double RUNNING_V = 13.5;

    /** A rested flooded battery has 12.45 V at 75 % (published rest-voltage table): above, any load trips it. */
    private static final double HIGHEST_TRIP_V = 12.4;

    /** US Army TM 9-6140-200-14 lets no battery below 10.5 V; half a volt of room is common practice. */
    private static final double LOWEST_TRIP_V = 11.0;

    /** Makers' and teaching manuals call 20 to 120 mA the most that is normal, most of them 50 mA. */
    private static final double MOST_PARKED_A = 0.1;

    /** FAA AC 43.13-1B, 11-35. */
    private static final double MOST_CONTINUOUS_FRACTION = 0.8;

    /** Fire apparatus specifications quoting NFPA 1901: source to device 10 % at most. */
    private static final double MOST_DROP_FRACTION = 0.1;

    /** Looks at what was put together. */
    void look(Vehicle vehicle, Scene scene) {
        VehicleEntry entry = file.vehicle().orElseThrow();
        entry.cutoffs().forEach(this::trip);
        entry.auxiliary().ifPresent(auxiliary -> new LinkDoubts(entry, auxiliary, vehicle, scene, findings).look());
        for (int i = 0; i < entry.circuits().size(); i++) {
            drop(vehicle.circuits().get(i), entry.circuits().get(i).place());
            fuse(vehicle.circuits().get(i), entry.circuits().get(i).place());
        }
        for (int i = 0; i < scene.phases().size(); i++) {
            Place place = file.scene().orElseThrow().phases().get(i).place();
            Phase phase = scene.phases().get(i);
            if (phase.mode() == EngineMode.PARKED) {
                parked(vehicle, phase, place);
            }
            if (phase.mode() == EngineMode.IDLING) {
                LoadBudget.alternator(vehicle, phase).ifPresent(alternator -> idle(vehicle, alternator, phase, place));
            }
        }
        if (file.requirements().map(RequirementsEntry::isEmpty).orElse(true)) {
            findings.warning(
                    file.place().key("requirements"),
                    "Nothing is asked of the vehicle, so there will be no verdict.",
                    "Add \"requirements\": hold, restartMarginV, leastChargePercent or leastVoltage.");
        }
    }

    private void trip(CutoffEntry cutoff) {
        double tripV = cutoff.tripV().orElseThrow();
        if (tripV > HIGHEST_TRIP_V) {
            findings.warning(
                    cutoff.place().key("tripV"),
                    text(
                            "tripV is %.2f V; a rested battery at about three quarters of its charge has no more, so"
                                    + " any load trips it early.",
                            tripV),
                    "11.6 to 12.2 V are common; basis: published rest voltages of flooded batteries.");
        }
        if (tripV < LOWEST_TRIP_V) {
            findings.warning(
                    cutoff.place().key("tripV"),
                    text("tripV is %.2f V; so little leaves next to nothing for a start.", tripV),
                    "11.6 to 12.2 V are common; basis: US Army TM 9-6140-200-14, never below 10.5 V.");
        }
    }

    private void drop(Circuit circuit, Place place) {
        double peakA = circuit.loads().stream().mapToDouble(Load::ratedCurrentA).sum();
        double dropV = peakA * circuit.feedOhm();
        if (dropV > MOST_DROP_FRACTION * NOMINAL_V) {
            findings.warning(
                    place.key("feed"),
                    text(
                            "With everything on at once, %.0f A, this feed loses %.1f V, more than a tenth.",
                            peakA, dropV),
                    "Thicker or shorter wire; basis: fire apparatus specifications, 10 % from source to device.");
        }
    }

    private void fuse(Circuit circuit, Place place) {
        double peakA = circuit.loads().stream().mapToDouble(Load::ratedCurrentA).sum();
        circuit.fuse()
                .filter(fuse -> peakA > fuse.effectiveA())
                .ifPresent(fuse -> findings.warning(
                        place.key("fuse"),
                        text(
                                "With everything on at once, %.1f A, this circuit draws more than its fuse carries for"
                                        + " long, %.1f A.",
                                peakA, fuse.effectiveA()),
                        "A larger fuse on a wire that bears it, or two circuits."));
    }

    private void parked(Vehicle vehicle, Phase phase, Place place) {
        double drawA = meanA(vehicle.loads().toList(), phase.stages(), NOMINAL_V);
        if (drawA > MOST_PARKED_A) {
            findings.warning(
                    place,
                    text("Parked, the vehicle draws %.0f mA.", 1000 * drawA),
                    "Makers' manuals call 20 to 120 mA the most that is normal. Do loads lack their stages?");
        }
    }

    private void idle(Vehicle vehicle, Alternator alternator, Phase phase, Place place) {
        double outputA = alternator.maximumA(phase.speed().lowestRpm());
        double drawA = meanA(vehicle.loads().toList(), phase.stages(), RUNNING_V);
        if (drawA > MOST_CONTINUOUS_FRACTION * outputA) {
            findings.warning(
                    place,
                    text(
                            "The load of this phase, %.0f A on average, is %.0f %% of what the hot alternator gives at"
                                    + " idle, %.0f A.",
                            drawA, 100 * drawA / Math.max(outputA, 1e-3), outputA),
                    "Raise engineRpm or shed load; basis: FAA AC 43.13-1B, continuous load 80 % of output at most.");
        }
    }

    /** Mean current of the loads that are on, and of the standby of those that are not. */
    static double meanA(List<Load> loads, Set<String> stages, double voltageV) {
        double onA = loads.stream()
                .filter(load -> load.isOnIn(stages))
                .mapToDouble(load -> load.meanCurrentA(voltageV))
                .sum();
        double standbyA = loads.stream()
                .filter(load -> !load.isOnIn(stages))
                .mapToDouble(Load::standbyCurrentA)
                .sum();
        return onA + standbyA;
    }

    private static String text(String format, Object... parts) {
        return String.format(Locale.ROOT, format, parts);
    }
}
