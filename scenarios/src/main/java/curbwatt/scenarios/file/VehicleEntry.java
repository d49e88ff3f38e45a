package curbwatt.scenarios.file;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A vehicle.
 *
 * @param place where it stands
 * @param name as the user calls it
 * @param battery the starter battery
 * @param auxiliary the second battery, if there is one
 * @param alternator the charging source, if there is one
 * @param circuits feeds with their loads
 * @param cutoffs voltage monitors
 * @param starter the starter
 * @param idleControl what raises the idle speed, if anything does
 * @param automaticStart what starts the engine for the battery, if anything does
 * @param engine what the engine burns, if it is known
 * @param underHood how the engine warms the air round it, if it is known
 */
public record VehicleEntry(
        Place place,
        Optional<String> name,
        Optional<BatteryEntry> battery,
        Optional<AuxiliaryEntry> auxiliary,
        Optional<AlternatorEntry> alternator,
        List<CircuitEntry> circuits,
        List<CutoffEntry> cutoffs,
        Optional<StarterEntry> starter,
        Optional<IdleControlEntry> idleControl,
        Optional<AutomaticStartEntry> automaticStart,
        Optional<EngineEntry> engine,
        Optional<UnderHoodEntry> underHood) {

    /** Takes a missing list as an empty one. */
    public VehicleEntry {
        circuits = circuits == null ? List.of() : List.copyOf(circuits);
        cutoffs = cutoffs == null ? List.of() : List.copyOf(cutoffs);
    }

    /** Returns the batteries that there are: starter battery, auxiliary battery. */
    public List<BatteryEntry> batteries() {
        return Stream.concat(battery.stream(), auxiliary.flatMap(AuxiliaryEntry::battery).stream())
                .toList();
    }
}
