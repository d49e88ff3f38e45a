package curbwatt.scenarios.check;

import curbwatt.scenarios.file.AutomaticStartEntry;
import curbwatt.scenarios.file.IdleControlEntry;
import curbwatt.scenarios.file.Place;
import curbwatt.scenarios.file.ScenarioFile;
import java.util.Optional;

/** A device that acts on the engine knows when to begin and when to end, and the two don't overlap. */
final class EngineDeviceRule implements Rule {
    /** What the program puts in where minimumRunMin is left out (min). */
    private static final double USUAL_MINIMUM_RUN_MIN = 10;

    @Override
    public void look(ScenarioFile file, Findings findings) {
        file.vehicle().ifPresent(vehicle -> {
            vehicle.idleControl().ifPresent(control -> trigger(control, findings));
            vehicle.automaticStart().ifPresent(device -> end(device, findings));
        });
    }

    private static void trigger(IdleControlEntry control, Findings findings) {
        Place place = control.place();
        if (findings.isTouched(place)) {
            return;
        }
        boolean byVoltage =
                control.raiseBelowV().isPresent() || control.releaseAboveV().isPresent();
        boolean byCurrent = control.raiseAboveDischargeA().isPresent()
                || control.releaseBelowDischargeA().isPresent();
        if (byVoltage == byCurrent) {
            findings.error(
                    place,
                    byVoltage
                            ? "The idle control looks at a voltage and at the battery's current."
                            : "The idle control does not say when it raises the idle speed.",
                    "Give raiseBelowV with releaseAboveV, or raiseAboveDischargeA with releaseBelowDischargeA.");
        } else if (byVoltage) {
            both(place, "raiseBelowV", control.raiseBelowV(), "releaseAboveV", control.releaseAboveV(), 1, findings);
        } else {
            both(
                    place,
                    "raiseAboveDischargeA",
                    control.raiseAboveDischargeA(),
                    "releaseBelowDischargeA",
                    control.releaseBelowDischargeA(),
                    -1,
                    findings);
            if (control.senseAtNode().isPresent()) {
                findings.warning(
                        place.key("senseAtNode"),
                        "senseAtNode has no effect: this idle control looks at the starter battery's current.",
                        "Remove it, or give raiseBelowV and releaseAboveV.");
            }
        }
    }

    private static void both(
            Place place,
            String raises,
            Optional<Double> raise,
            String releases,
            Optional<Double> release,
            int direction,
            Findings findings) {
        if (raise.isEmpty() || release.isEmpty()) {
            String missing = raise.isEmpty() ? raises : releases;
            findings.error(
                    place.key(missing),
                    "The idle control has no " + missing + ".",
                    "Add it; " + raises + " and " + releases + " go together.");
        } else if (direction * (release.get() - raise.get()) <= 0) {
            findings.error(
                    place.key(releases),
                    releases + " is " + Shown.number(release.get()) + ", not " + (direction > 0 ? "above " : "below ")
                            + raises + ", " + Shown.number(raise.get()) + ".",
                    "It would let go of the speed as soon as it has raised it.");
        }
    }

    private static void end(AutomaticStartEntry device, Findings findings) {
        Place place = device.place();
        if (findings.isTouched(place)) {
            return;
        }
        if (device.stopBelowChargeA().isEmpty() && device.stopAfterMin().isEmpty()) {
            findings.error(
                    place,
                    "The automatic start does not say when it stops the engine again.",
                    "Add stopBelowChargeA (0.1 to 200 A), stopAfterMin (0.5 to 1440 min), or both.");
        }
        double minimumMin = device.minimumRunMin().orElse(USUAL_MINIMUM_RUN_MIN);
        double longestMin = device.stopAfterMin().orElse(Double.MAX_VALUE);
        if (longestMin < minimumMin) {
            findings.error(
                    place.key("stopAfterMin"),
                    "stopAfterMin is " + Shown.number(longestMin) + " min, below minimumRunMin, "
                            + Shown.number(minimumMin) + " min.",
                    "Lengthen it, or shorten minimumRunMin.");
        }
    }
}
