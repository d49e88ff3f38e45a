package curbwatt.scenarios.check;

import curbwatt.scenarios.file.CutoffEntry;
import curbwatt.scenarios.file.NodeWord;
import curbwatt.scenarios.file.Place;
import curbwatt.scenarios.file.RequirementsEntry;
import curbwatt.scenarios.file.ScenarioFile;
import curbwatt.scenarios.file.SceneEntry;
import curbwatt.scenarios.file.StartEntry;
import curbwatt.scenarios.file.VehicleEntry;
import java.util.Optional;

/** The equipment node is spoken of only where there is one, and a cutoff senses in one place. */
final class NodeRule implements Rule {

    @Override
    public void look(ScenarioFile file, Findings findings) {
        file.vehicle().ifPresent(vehicle -> {
            vehicle.cutoffs().forEach(cutoff -> onePlace(cutoff, findings));
            if (vehicle.auxiliary().isEmpty()
                    && !findings.isTouched(vehicle.place().key("auxiliary"))) {
                withoutAuxiliary(vehicle, file.scene().flatMap(SceneEntry::start), findings);
                file.requirements().ifPresent(asked -> nothingAsked(asked, findings));
            }
        });
    }

    private static void onePlace(CutoffEntry cutoff, Findings findings) {
        if (cutoff.senseAtNode().isPresent() && cutoff.senseAtFeedEndOf().isPresent()) {
            findings.error(
                    cutoff.place().key("senseAtNode"),
                    "The cutoff senses at a node and at the end of a feed.",
                    "Keep senseAtNode or senseAtFeedEndOf.");
        }
    }

    private static void withoutAuxiliary(VehicleEntry vehicle, Optional<StartEntry> start, Findings findings) {
        vehicle.circuits()
                .forEach(circuit ->
                        starterOnly(circuit.node(), circuit.place().key("node"), "The circuit hangs on", findings));
        vehicle.cutoffs()
                .forEach(cutoff -> starterOnly(
                        cutoff.senseAtNode(), cutoff.place().key("senseAtNode"), "The cutoff senses at", findings));
        vehicle.idleControl()
                .ifPresent(control -> starterOnly(
                        control.senseAtNode(),
                        control.place().key("senseAtNode"),
                        "The idle control senses at",
                        findings));
        vehicle.automaticStart()
                .ifPresent(device -> starterOnly(
                        device.senseAtNode(),
                        device.place().key("senseAtNode"),
                        "The automatic start senses at",
                        findings));
        start.filter(entry -> entry.auxiliaryChargePercent().isPresent())
                .ifPresent(entry -> findings.error(
                        entry.place().key("auxiliaryChargePercent"),
                        "auxiliaryChargePercent is given, but the vehicle has no auxiliary battery.",
                        "Remove it, or add an \"auxiliary\" to the vehicle."));
    }

    private static void nothingAsked(RequirementsEntry asked, Findings findings) {
        if (asked.leastAuxiliaryChargePercent().isPresent()) {
            findings.error(
                    asked.place().key("leastAuxiliaryChargePercent"),
                    "leastAuxiliaryChargePercent is given, but the vehicle has no auxiliary battery.",
                    "Remove it, or add an \"auxiliary\" to the vehicle.");
        }
    }

    private static void starterOnly(Optional<NodeWord> node, Place place, String doing, Findings findings) {
        if (node.filter(word -> word == NodeWord.EQUIPMENT).isPresent()) {
            findings.error(
                    place,
                    doing + " the equipment node, but without an auxiliary battery there is none.",
                    "Add an \"auxiliary\" to the vehicle, or write \"starter\".");
        }
    }
}
