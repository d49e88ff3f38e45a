package curbwatt.scenarios.assemble;

import curbwatt.engine.scene.Scene;
import curbwatt.engine.verdict.Requirement;
import curbwatt.scenarios.file.RequirementsEntry;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * From complete entries to what is asked in a scene.
 *
 * @param guarded catches what the engine refuses
 * @param scene the scene as the file has it, without the parked hours after it
 */
record RequirementAssembler(Guarded guarded, Scene scene) {
    private static final double MINUTE_S = 60;
    private static final double HOUR_S = 3600;
    private static final double PERCENT = 100;

    /** Returns what is asked: circuits to hold, phases without a trip, starting, charge, voltages. */
    List<Requirement> requirements(RequirementsEntry entry) {
        List<Requirement> asked = new ArrayList<>();
        entry.hold()
                .forEach(hold -> asked.add(guarded.build(
                        hold.place(),
                        () -> new Requirement.HoldCircuits(
                                Set.copyOf(hold.circuits()), hold.forMin().orElseThrow() * MINUTE_S))));
        guarded.build(entry.place(), () -> {
            if (!entry.noTripIn().isEmpty()) {
                asked.add(new Requirement.NoTrip(Set.copyOf(entry.noTripIn())));
            }
            entry.restartMarginV().ifPresent(marginV -> {
                asked.add(new Requirement.WillStart(marginV));
                entry.restartAfterParkedH()
                        .ifPresent(parkedH -> asked.add(new Requirement.StartAfterParked(
                                SceneAssembler.parkedName(scene), parkedH * HOUR_S, marginV)));
            });
            entry.leastChargePercent().ifPresent(least -> asked.add(new Requirement.KeepCharge(least / PERCENT)));
            entry.leastAuxiliaryChargePercent()
                    .ifPresent(least -> asked.add(new Requirement.KeepAuxiliaryCharge(least / PERCENT)));
            return asked;
        });
        entry.leastVoltage()
                .forEach(least -> asked.add(guarded.build(
                        least.place(),
                        () -> new Requirement.KeepVoltage(
                                least.circuit().orElseThrow(), least.voltageV().orElseThrow()))));
        return List.copyOf(asked);
    }
}
