package curbwatt.charts.output;

import curbwatt.engine.battery.BatteryParameters;
import curbwatt.engine.battery.DiffusionModes;
import java.util.Locale;
import java.util.stream.IntStream;

/** A battery as it was fitted to its label. */
public final class BatteryJson {

    private BatteryJson() {}

    /** The battery as new; further entries may be added. */
    public static JsonObject of(BatteryParameters parameters) {
        DiffusionModes modes = parameters.modes();
        return new JsonObject()
                .with("chemistry", parameters.chemistry().name().toLowerCase(Locale.ROOT))
                .with("ratedC20Ah", parameters.ratedC20Ah())
                .with("capacityAh", parameters.capacityAh())
                .with("totalChargeAh", parameters.totalChargeAh())
                .with("peukertExponent", parameters.peukertExponent())
                .with("resistanceOhm", parameters.resistanceOhm())
                .with(
                        "modes",
                        IntStream.range(0, modes.size())
                                .mapToObj(m -> new JsonObject()
                                        .with("timeConstantH", modes.timeConstantH(m))
                                        .with("weight", modes.weight(m)))
                                .toList());
    }
}
