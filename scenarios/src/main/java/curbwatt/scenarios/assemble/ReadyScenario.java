package curbwatt.scenarios.assemble;

import curbwatt.engine.scene.Roster;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.vehicle.Vehicle;
import curbwatt.engine.verdict.Requirement;
import curbwatt.engine.wiring.CircuitPlan;
import curbwatt.scenarios.problem.Problem;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A scenario file that has been read, checked and put together.
 *
 * @param source file name or {@code demo:NAME}, as the user gave it
 * @param title the scenario's title
 * @param description what it is about; may be empty
 * @param vehicle the vehicle
 * @param circuitPlans wire, fuse and currents of each circuit whose wire the file gives, in its order
 * @param scene the scene
 * @param roster the days of the vehicle's duty, if the file has a roster
 * @param requirements what is asked, in the file's order
 * @param studies what each study of it looks at
 * @param traceSpacingS time between lines of the trace (s)
 * @param assumptions sentences on what was estimated or taken from the catalogue instead of the file
 * @param warnings problems that do not stop the work
 */
public record ReadyScenario(
        String source,
        String title,
        String description,
        Vehicle vehicle,
        List<CircuitPlan> circuitPlans,
        Scene scene,
        Optional<Roster> roster,
        List<Requirement> requirements,
        StudyPlans studies,
        double traceSpacingS,
        List<String> assumptions,
        List<Problem> warnings) {

    /** Copies the lists. */
    public ReadyScenario {
        Objects.requireNonNull(roster, "roster");
        Objects.requireNonNull(studies, "studies");
        circuitPlans = List.copyOf(circuitPlans);
        requirements = List.copyOf(requirements);
        assumptions = List.copyOf(assumptions);
        warnings = List.copyOf(warnings);
    }

    /** The same scenario with another vehicle. */
    public ReadyScenario withVehicle(Vehicle other) {
        return new ReadyScenario(
                source,
                title,
                description,
                other,
                circuitPlans,
                scene,
                roster,
                requirements,
                studies,
                traceSpacingS,
                assumptions,
                warnings);
    }

    /** The same scenario with another time between lines of the trace (s). */
    public ReadyScenario withTraceSpacing(double spacingS) {
        return new ReadyScenario(
                source,
                title,
                description,
                vehicle,
                circuitPlans,
                scene,
                roster,
                requirements,
                studies,
                spacingS,
                assumptions,
                warnings);
    }
}
