package curbwatt.engine.result;

import curbwatt.engine.event.Event;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What came out of one run.
 *
 * @param durationS length of the run (s)
 * @param events in order of time
 * @param crankChecks asked at each engine start, at the end of each phase with the engine off, and at the scene's end
 * @param restartTimeS first time with the engine off at which the restart margin was gone (s); empty: it never was
 * @param phases phase by phase
 * @param circuits circuit by circuit
 * @param loads load by load
 * @param batteries the starter battery, then the auxiliary one if there is one
 * @param link the link between them, if there is one
 * @param engine what the engine did
 * @param charge ampere-hours
 * @param energy watt-hours
 * @param lowestV lowest voltage of the starter node (V)
 * @param lowestAtS when (s)
 * @param endChargeFraction state of charge of the starter battery at the end
 * @param lowestChargeFraction lowest state of charge of the starter battery
 * @param smallestFreezingMarginK least distance of the starter battery's temperature above its electrolyte's freezing
 *     point (K)
 * @param steps number of time steps taken
 */
public record RunResult(
        double durationS,
        List<Event> events,
        List<CrankCheck> crankChecks,
        OptionalDouble restartTimeS,
        List<PhaseSummary> phases,
        List<CircuitSummary> circuits,
        List<LoadSummary> loads,
        List<BatterySummary> batteries,
        Optional<LinkSummary> link,
        EngineSummary engine,
        ChargeLedger charge,
        EnergyLedger energy,
        double lowestV,
        double lowestAtS,
        double endChargeFraction,
        double lowestChargeFraction,
        double smallestFreezingMarginK,
        long steps) {

    /** Copies the lists. */
    public RunResult {
        events = List.copyOf(events);
        crankChecks = List.copyOf(crankChecks);
        phases = List.copyOf(phases);
        circuits = List.copyOf(circuits);
        loads = List.copyOf(loads);
        batteries = List.copyOf(batteries);
    }
}
