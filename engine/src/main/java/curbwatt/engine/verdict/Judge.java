package curbwatt.engine.verdict;

import curbwatt.engine.event.Event;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.result.CircuitSummary;
import curbwatt.engine.result.CrankCheck;
import curbwatt.engine.result.LoadSummary;
import curbwatt.engine.result.PhaseSummary;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.vehicle.Vehicle;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Holds a run against what was asked of it.
 *
 * @param vehicle the vehicle that ran
 * @param scene the scene it went through
 * @param requirements what is asked, in the order of the findings
 */
public record Judge(Vehicle vehicle, Scene scene, List<Requirement> requirements) {

    /** Copies the list. */
    public Judge {
        requirements = List.copyOf(requirements);
    }

    /** The verdict on a run. */
    public Verdict judge(RunResult result) {
        List<Finding> findings = requirements.stream()
                .map(requirement -> finding(requirement, result))
                .toList();
        return new Verdict(findings, new DoubtFinder(vehicle, scene, result).find());
    }

    private Finding finding(Requirement requirement, RunResult result) {
        if (requirement instanceof Requirement.HoldCircuits hold) {
            return held(hold, result);
        }
        if (requirement instanceof Requirement.WillStart start) {
            return starts(start, result);
        }
        if (requirement instanceof Requirement.StartAfterParked start) {
            return startsAfterParked(start, result);
        }
        if (requirement instanceof Requirement.NoTrip none) {
            return undisturbed(none, result);
        }
        if (requirement instanceof Requirement.KeepCharge keep) {
            return chargeKept(keep, keep.leastFraction(), result.lowestChargeFraction());
        }
        if (requirement instanceof Requirement.KeepAuxiliaryCharge keep) {
            return chargeKept(keep, keep.leastFraction(), lowestAuxiliaryFraction(result));
        }
        return voltageKept((Requirement.KeepVoltage) requirement, result);
    }

    private static Finding chargeKept(Requirement keep, double leastFraction, double lowestFraction) {
        boolean met = lowestFraction >= leastFraction;
        return new Finding(keep, met, lowestFraction, leastFraction, "1", "", OptionalDouble.empty());
    }

    /** The run lists the starter battery first, then the auxiliary one. */
    private static double lowestAuxiliaryFraction(RunResult result) {
        return result.batteries().stream()
                .skip(1)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no auxiliary battery in the run"))
                .lowestChargeFraction();
    }

    private static Finding held(Requirement.HoldCircuits hold, RunResult result) {
        double heldS = result.durationS();
        String cause = "";
        for (CircuitSummary circuit : result.circuits()) {
            double lostS = circuit.firstLostS().orElse(Double.POSITIVE_INFINITY);
            if (hold.circuits().contains(circuit.circuit()) && lostS < heldS) {
                heldS = lostS;
                cause = circuit.lostBy();
            }
        }
        for (LoadSummary load : result.loads()) {
            double lostS = load.firstDropOutS().orElse(Double.POSITIVE_INFINITY);
            if (hold.circuits().contains(load.circuit()) && lostS < heldS) {
                heldS = lostS;
                cause = load.load();
            }
        }
        // a loss at the very instant asked for, up to the solver's notion of one, is not a failure
        boolean met = heldS >= hold.durationS() - 1e-6;
        OptionalDouble atS = cause.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(heldS);
        return new Finding(hold, met, heldS / 60, hold.durationS() / 60, "min", cause, atS);
    }

    private Finding starts(Requirement.WillStart start, RunResult result) {
        List<String> parked = requirements.stream()
                .filter(Requirement.StartAfterParked.class::isInstance)
                .map(asked -> ((Requirement.StartAfterParked) asked).phase())
                .toList();
        List<CrankCheck> inScene = result.crankChecks().stream()
                .filter(check -> !parked.contains(check.phase()))
                .toList();
        // a scene that ends with its engine running is asked for a start only after it was parked
        return start(start, start.marginV(), inScene.isEmpty() ? result.crankChecks() : inScene);
    }

    private static Finding startsAfterParked(Requirement.StartAfterParked start, RunResult result) {
        List<CrankCheck> parked = result.crankChecks().stream()
                .filter(check -> check.phase().equals(start.phase()))
                .toList();
        if (parked.isEmpty()) {
            throw new IllegalArgumentException("no phase '" + start.phase() + "' with the engine off in the run");
        }
        return start(start, start.marginV(), parked);
    }

    private static Finding start(Requirement start, double marginV, List<CrankCheck> checks) {
        CrankCheck worst = checks.stream()
                .min(Comparator.comparingDouble(CrankCheck::marginV))
                .orElseThrow();
        return new Finding(
                start,
                worst.marginV() >= marginV,
                worst.marginV(),
                marginV,
                "V",
                worst.phase(),
                OptionalDouble.of(worst.timeS()));
    }

    private static Finding undisturbed(Requirement.NoTrip none, RunResult result) {
        List<Event> trips = result.events().stream()
                .filter(event ->
                        event.kind() == EventKind.CUTOFF_TRIPPED || event.kind() == EventKind.RUN_TIME_LIMIT_REACHED)
                .filter(event -> result.phases().stream()
                        .anyMatch(phase -> none.phases().contains(phase.phase()) && isWithin(phase, event.timeS())))
                .toList();
        return new Finding(
                none,
                trips.isEmpty(),
                trips.size(),
                0,
                "trips",
                trips.isEmpty() ? "" : trips.get(0).subject(),
                trips.stream().mapToDouble(Event::timeS).findFirst());
    }

    /** An instant between two phases belongs to the later one. */
    private static boolean isWithin(PhaseSummary phase, double timeS) {
        return timeS >= phase.startS() && timeS < phase.startS() + phase.durationS();
    }

    private static Finding voltageKept(Requirement.KeepVoltage keep, RunResult result) {
        CircuitSummary circuit = result.circuits().stream()
                .filter(candidate -> candidate.circuit().equals(keep.circuit()))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no circuit '" + keep.circuit() + "' in the run"));
        return new Finding(
                keep,
                circuit.lowestV() >= keep.leastV(),
                circuit.lowestV(),
                keep.leastV(),
                "V",
                keep.circuit(),
                OptionalDouble.of(circuit.lowestAtS()));
    }
}
