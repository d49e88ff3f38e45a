package curbwatt.scenarios.assemble;

import curbwatt.engine.alternator.VoltageRegulator;
import curbwatt.engine.link.BatteryLink;
import curbwatt.engine.load.Load;
import curbwatt.engine.scene.AirTemperature;
import curbwatt.engine.scene.Phase;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.vehicle.BusNode;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.vehicle.Vehicle;
import curbwatt.scenarios.check.Findings;
import curbwatt.scenarios.file.AuxiliaryEntry;
import curbwatt.scenarios.file.CutoffEntry;
import curbwatt.scenarios.file.Place;
import curbwatt.scenarios.file.VehicleEntry;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * Warnings about a second battery whose link is possible but will not do what it is for.
 *
 * @param entry the vehicle in the file, for places
 * @param auxiliary its second battery
 * @param vehicle the vehicle
 * @param scene the scene
 * @param findings told of them
 */
record LinkDoubts(VehicleEntry entry, AuxiliaryEntry auxiliary, Vehicle vehicle, Scene scene, Findings findings) {
    private static final double RUNNING_V = 13.5;

    /** Rested lead batteries take no charge below about 13.2 V and don't fill below 13.5 V: common practice. */
    private static final double LEAST_CHARGING_V = 13.5;

    /** A rested flooded battery has 12.45 V at 75 % of its charge (published rest-voltage table). */
    private static final double LEAST_PARTING_V = 12.4;

    /** Looks at the link. */
    void look() {
        if (equipment().isEmpty()) {
            findings.warning(
                    auxiliary.place(),
                    "No circuit hangs on the equipment node, so the auxiliary battery feeds nothing.",
                    "Write \"node\": \"equipment\" in the circuits that it is for.");
        }
        BatteryLink link = vehicle.auxiliary().orElseThrow().link();
        if (!(link instanceof BatteryLink.Solid)) {
            entry.cutoffs().forEach(this::guards);
        }
        if (link instanceof BatteryLink.ChargeRelay relay) {
            reached("closeV", relay.closeV(), "closes");
            parts("openV", relay.openV());
        } else if (link instanceof BatteryLink.Diode diode) {
            highestSetPointV().ifPresent(setPointV -> fills("forwardV", setPointV - diode.forwardV()));
        } else if (link instanceof BatteryLink.DcDcCharger charger) {
            reached("startV", charger.startV(), "starts");
            parts("stopV", charger.stopV());
            fills("outputV", charger.outputV());
            suffices(charger);
        }
    }

    private void guards(CutoffEntry cutoff) {
        boolean unsaid =
                cutoff.senseAtFeedEndOf().isEmpty() && cutoff.senseAtNode().isEmpty();
        boolean ofEquipment = vehicle.circuits().stream()
                .anyMatch(circuit -> circuit.node() == BusNode.EQUIPMENT
                        && cutoff.disconnects().contains(circuit.name()));
        if (unsaid && ofEquipment) {
            findings.warning(
                    cutoff.place(),
                    "This cutoff disconnects circuits of the equipment node but senses at the starter node: it does not"
                            + " see the battery that they run down.",
                    "Write \"senseAtNode\": \"equipment\", or \"starter\" if it is meant so.");
        }
    }

    private void reached(String key, double levelV, String does) {
        highestSetPointV().ifPresent(setPointV -> {
            if (levelV > setPointV) {
                findings.warning(
                        figure(key),
                        text(
                                "%s is %.2f V, but in this scene the alternator holds %.2f V at most: the link never %s.",
                                key, levelV, setPointV, does),
                        "About 13.3 V is common: above a rested battery, below any charging voltage.");
            }
        });
    }

    private void parts(String key, double levelV) {
        if (levelV < LEAST_PARTING_V) {
            findings.warning(
                    figure(key),
                    text(
                            "%s is %.2f V; with the engine off the equipment draws on the starter battery until that"
                                    + " is at three quarters of its charge or less.",
                            key, levelV),
                    "About 12.8 V is common; basis: published rest voltages of flooded batteries.");
        }
    }

    private void fills(String key, double chargingV) {
        if (chargingV < LEAST_CHARGING_V) {
            findings.warning(
                    figure(key),
                    text("The auxiliary battery is charged with %.2f V at most and will not be full.", chargingV),
                    "13.8 to 14.6 V are common; below 13.5 V lead batteries don't fill.");
        }
    }

    private void suffices(BatteryLink.DcDcCharger charger) {
        scene.phases().stream()
                .filter(phase -> phase.mode().isRunning())
                .max(Comparator.comparingDouble(this::equipmentA))
                .filter(phase -> equipmentA(phase) > charger.limitA())
                .ifPresent(phase -> findings.warning(
                        figure("limitA"),
                        text(
                                "The charger gives %.0f A at most; in the phase '%s' the equipment draws %.0f A on"
                                        + " average: the auxiliary battery is discharged although the engine runs.",
                                charger.limitA(), phase.name(), equipmentA(phase)),
                        "A larger charger, or loads that hang on the starter node."));
    }

    private double equipmentA(Phase phase) {
        return TradeDoubts.meanA(equipment(), phase.stages(), RUNNING_V);
    }

    private List<Load> equipment() {
        return vehicle.circuits().stream()
                .filter(circuit -> circuit.node() == BusNode.EQUIPMENT)
                .map(Circuit::loads)
                .flatMap(List::stream)
                .toList();
    }

    /** Highest voltage that the regulator holds while the engine runs; empty if nothing charges in this scene (V). */
    private OptionalDouble highestSetPointV() {
        if (vehicle.alternator().isEmpty()) {
            return OptionalDouble.empty();
        }
        VoltageRegulator regulator = vehicle.alternator().get().regulator();
        return scene.phases().stream()
                .filter(phase -> phase.mode().isRunning())
                .flatMap(phase -> phase.air().points().stream())
                .mapToDouble(AirTemperature.Point::airC)
                .map(regulator::setPointV)
                .max();
    }

    /** Where a figure stands, or, if a part supplies it, where the link does. */
    private Place figure(String key) {
        Place link = auxiliary.link().orElseThrow().place();
        return findings.isWritten(link.key(key)) ? link.key(key) : link;
    }

    private static String text(String format, Object... parts) {
        return String.format(Locale.ROOT, format, parts);
    }
}
