package curbwatt.engine.study.size;

import curbwatt.engine.battery.BatteryParameters;
import java.util.Objects;

/**
 * A battery that the fleet can buy.
 *
 * @param name as the user calls it
 * @param parameters the battery as new, fitted to its label
 */
public record Candidate(String name, BatteryParameters parameters) {

    /** Refuses missing parts. */
    public Candidate {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(parameters, "parameters");
    }

    /** Its 20 h capacity (Ah). */
    public double c20Ah() {
        return parameters.ratedC20Ah();
    }
}
