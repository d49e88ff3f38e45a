package curbwatt.scenarios.file;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The top object.
 *
 * @param place where it stands
 * @param title one line on what it is about
 * @param description more about it
 * @param vehicle the vehicle
 * @param scene what it goes through
 * @param requirements what is asked of it
 * @param studies what studies of it look at
 * @param trace how densely the run is recorded
 */
public record ScenarioFile(
        Place place,
        Optional<String> title,
        Optional<String> description,
        Optional<VehicleEntry> vehicle,
        Optional<SceneEntry> scene,
        Optional<RequirementsEntry> requirements,
        Optional<StudiesEntry> studies,
        Optional<TraceEntry> trace) {

    /** Returns every battery of the file: those of the vehicle, and those that the fleet can buy. */
    public List<BatteryEntry> batteries() {
        return Stream.concat(
                        vehicle.stream().flatMap(entry -> entry.batteries().stream()),
                        studies.flatMap(StudiesEntry::size).stream().flatMap(size -> size.labels().stream()))
                .toList();
    }
}
