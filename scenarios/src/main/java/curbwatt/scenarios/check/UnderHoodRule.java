package curbwatt.scenarios.check;

import curbwatt.scenarios.file.BatteryEntry;
import curbwatt.scenarios.file.PhaseEntry;
import curbwatt.scenarios.file.Place;
import curbwatt.scenarios.file.ScenarioFile;
import curbwatt.scenarios.file.VehicleEntry;
import curbwatt.scenarios.problem.Quoted;
import java.util.List;
import java.util.Optional;

/** The air under the hood is known in every phase or in none, and something is there that it acts on. */
final class UnderHoodRule implements Rule {

    @Override
    public void look(ScenarioFile file, Findings findings) {
        if (file.vehicle().isEmpty() || file.scene().isEmpty()) {
            return;
        }
        VehicleEntry vehicle = file.vehicle().get();
        List<PhaseEntry> phases = file.scene().get().phases();
        phases.forEach(phase -> phase(phase, findings));
        Optional<PhaseEntry> says =
                phases.stream().filter(PhaseEntry::saysUnderHood).findFirst();
        if (vehicle.underHood().isEmpty()) {
            says.ifPresent(one -> everywhere(one, phases, findings));
        }
        Optional<Place> known = vehicle.underHood().map(hood -> hood.place()).or(() -> says.map(UnderHoodRule::place));
        known.ifPresentOrElse(
                place -> without(place, vehicle, findings), () -> batteriesOutside(vehicle, phases, findings));
    }

    private static void phase(PhaseEntry phase, Findings findings) {
        Place profile = phase.place().key("underHoodProfile");
        if (phase.underHoodC().isPresent() && !phase.underHoodProfile().isEmpty()) {
            findings.error(profile, "The phase has underHoodC and an underHoodProfile.", "Keep one of them.");
        }
        double lengthMin = phase.durationMin().orElse(Double.MAX_VALUE);
        SceneRule.profile(profile, phase.underHoodProfile(), lengthMin, findings);
    }

    private static Place place(PhaseEntry phase) {
        return phase.place().key(phase.underHoodC().isPresent() ? "underHoodC" : "underHoodProfile");
    }

    private static void everywhere(PhaseEntry says, List<PhaseEntry> phases, Findings findings) {
        for (PhaseEntry phase : phases) {
            if (!phase.saysUnderHood() && !findings.isTouched(phase.place().key("underHoodProfile"))) {
                findings.error(
                        phase.place().key("underHoodC"),
                        "The air under the hood is not given in this phase, but it is in "
                                + Quoted.name(says.name().orElse("another")) + ".",
                        "Add underHoodC (-50 to 110 °C) or an underHoodProfile here too, or an \"underHood\" to the"
                                + " vehicle, which says how the engine warms it.");
            }
        }
    }

    private static void without(Place known, VehicleEntry vehicle, Findings findings) {
        boolean acts =
                vehicle.alternator().isPresent() || vehicle.batteries().stream().anyMatch(UnderHoodRule::isInside);
        if (!acts && !findings.isTouched(vehicle.place().key("alternator"))) {
            findings.warning(
                    known,
                    "The air under the hood acts on nothing: there is no alternator, and no battery is in the engine"
                            + " space.",
                    "Add an \"alternator\", or \"inEngineSpace\": true to a battery.");
        }
    }

    private static void batteriesOutside(VehicleEntry vehicle, List<PhaseEntry> phases, Findings findings) {
        boolean touched = findings.isTouched(vehicle.place().key("underHood"))
                || phases.stream().anyMatch(phase -> findings.isTouched(phase.place()));
        if (touched) {
            return;
        }
        vehicle.batteries().stream()
                .filter(UnderHoodRule::isInside)
                .forEach(battery -> findings.warning(
                        battery.place().key("inEngineSpace"),
                        "The battery is in the engine space, but nothing says how warm the air there is: it follows the"
                                + " air outside.",
                        "Add underHoodC to the phases, or an \"underHood\" to the vehicle."));
    }

    private static boolean isInside(BatteryEntry battery) {
        return battery.inEngineSpace().orElse(false);
    }
}
