package curbwatt.engine.study.idle.money;

import curbwatt.engine.quantity.Require;
import java.util.OptionalDouble;

/**
 * What one scene takes.
 *
 * @param fuelLitres fuel (L); empty: not known
 * @param engineH time with the engine running (h)
 * @param starts how often the engine is started
 */
public record Usage(OptionalDouble fuelLitres, double engineH, int starts) {

    /** Refuses negative figures; fuel may be negative, where more is charged than is taken. */
    public Usage {
        fuelLitres.ifPresent(found -> Require.finite("fuelLitres", found, "L"));
        Require.inside("engineH", engineH, 0, 1e6, "h");
        Require.inside("starts", starts, 0, 1e9, "");
    }
}
