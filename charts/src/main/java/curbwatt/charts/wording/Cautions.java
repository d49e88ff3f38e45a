package curbwatt.charts.wording;

import curbwatt.engine.scene.Scene;
import curbwatt.engine.vehicle.Vehicle;
import java.util.ArrayList;
import java.util.List;

/** The safety lines that no figure can replace. {@code docs/cautions.md} says more. */
public final class Cautions {

    private Cautions() {}

    /** The cautions that apply to a vehicle in a scene. */
    public static List<String> of(Vehicle vehicle, Scene scene) {
        List<String> lines = new ArrayList<>(List.of(
                "This is a model, not a measurement. Before you rely on it, let the truck stand through the scene once with a"
                        + " meter on its battery.",
                "Local codes, the vehicle builder's instructions and licensed practice come first.",
                "A lead-acid battery gives off explosive gas and holds acid: ventilate, keep sparks and flames away, wear eye"
                        + " protection.",
                "A battery drives thousands of amperes through a dropped tool: take off rings and watches, undo the negative"
                        + " cable first and connect it last, fuse every feed at the battery."));
        if (scene.phases().stream().anyMatch(phase -> phase.mode().isRunning())) {
            lines.add("Exhaust kills: never idle in a closed space, and mind people who work behind the truck.");
        }
        if (!vehicle.cutoffs().isEmpty()) {
            lines.add(
                    "Radios are the crew's lifeline: check what a cutoff silences, and keep one radio that does not depend on"
                            + " it.");
        }
        return List.copyOf(lines);
    }
}
