package curbwatt.scenarios.check;

import curbwatt.scenarios.file.LoadEntry;
import curbwatt.scenarios.file.PhaseEntry;
import curbwatt.scenarios.file.ScenarioFile;
import curbwatt.scenarios.problem.Nearest;
import curbwatt.scenarios.problem.Quoted;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Stages of phases and of loads must speak of the same things. */
final class StageRule implements Rule {

    @Override
    public void look(ScenarioFile file, Findings findings) {
        if (file.vehicle().isEmpty() || file.scene().isEmpty()) {
            return;
        }
        List<LoadEntry> loads = file.vehicle().get().circuits().stream()
                .flatMap(circuit -> circuit.loads().stream())
                .toList();
        List<PhaseEntry> phases = file.scene().get().phases();
        Set<String> ofLoads = new TreeSet<>();
        loads.forEach(load -> ofLoads.addAll(load.stages()));
        Set<String> ofPhases = new TreeSet<>();
        phases.forEach(phase -> ofPhases.addAll(phase.stages()));
        Set<String> meant = new HashSet<>();
        boolean loadsInDoubt = findings.isTouched(file.vehicle().get().place().key("circuits"));
        boolean phasesInDoubt = findings.isTouched(file.scene().get().place().key("phases"));
        if (!loadsInDoubt) {
            phases.forEach(phase -> known(phase, ofLoads, meant, findings));
        }
        if (!phasesInDoubt) {
            ofPhases.addAll(meant);
            loads.forEach(load -> used(load, ofPhases, findings));
        }
    }

    private static void known(PhaseEntry phase, Set<String> ofLoads, Set<String> meant, Findings findings) {
        for (int i = 0; i < phase.stages().size(); i++) {
            String stage = phase.stages().get(i);
            if (!ofLoads.contains(stage)) {
                List<String> nearest = Nearest.to(stage, ofLoads);
                meant.addAll(nearest);
                findings.error(
                        phase.place().key("stages").item(i),
                        "No load has the stage " + Quoted.name(stage) + ".",
                        Quoted.didYouMean(nearest) + "Stages of the loads: " + Quoted.list(ofLoads) + ".");
            }
        }
    }

    /** A stage of a load that no phase has is no mistake by itself: a truck does not use everything in every scene. */
    private static void used(LoadEntry load, Set<String> ofPhases, Findings findings) {
        if (load.stages().stream().anyMatch(ofPhases::contains)) {
            return;
        }
        for (int i = 0; i < load.stages().size(); i++) {
            List<String> nearest = Nearest.to(load.stages().get(i), ofPhases);
            if (!nearest.isEmpty()) {
                findings.warning(
                        load.place().key("stages").item(i),
                        "No phase has the stage " + Quoted.name(load.stages().get(i)) + ", so "
                                + Quoted.name(load.name().orElse("this load")) + " is never on.",
                        Quoted.didYouMean(nearest) + "Stages of the phases: " + Quoted.list(ofPhases) + ".");
            }
        }
    }
}
