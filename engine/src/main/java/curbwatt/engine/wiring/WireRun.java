package curbwatt.engine.wiring;

import curbwatt.engine.quantity.Require;
import java.util.Objects;

/**
 * A feed from a source to its load and back.
 *
 * @param areaMm2 conductor area, mm², 0.01 to 1000
 * @param lengthM length one way, m, 0 to 1000
 * @param wayBack how the current returns
 * @param material what the wire is made of
 */
public record WireRun(double areaMm2, double lengthM, Return wayBack, WireMaterial material) {
    /** Refuses impossible values. */
    public WireRun {
        Require.inside("areaMm2", areaMm2, 0.01, 1000, "mm²");
        Require.inside("lengthM", lengthM, 0, 1000, "m");
        Objects.requireNonNull(wayBack, "wayBack");
        Objects.requireNonNull(material, "material");
    }

    /** Makes a run of copper. */
    public WireRun(double areaMm2, double lengthM, Return wayBack) {
        this(areaMm2, lengthM, wayBack, WireMaterial.COPPER);
    }

    /** How current returns from the load. */
    public sealed interface Return {
        /** By a second wire of the same area and length. */
        record SameWire() implements Return {}

        /**
         * By the chassis.
         *
         * @param resistanceOhm resistance of the chassis path with its joints, Ω, 0 to 1, at any temperature
         */
        record Chassis(double resistanceOhm) implements Return {
            /** Refuses impossible values. */
            public Chassis {
                Require.inside("resistanceOhm", resistanceOhm, 0, 1, "Ohm");
            }
        }
    }

    /** Returns a run of a wire gauge with a second wire back. */
    public static WireRun ofGauge(WireGauge gauge, double lengthM) {
        return new WireRun(gauge.areaMm2(), lengthM, new Return.SameWire());
    }

    /** Returns the same run in copper of another size. */
    public WireRun inCopper(WireSize size) {
        return new WireRun(size.areaMm2(), lengthM, wayBack);
    }

    /**
     * Returns the resistance out and back, Ω.
     *
     * @param temperatureC conductor temperature, °C, −60 to 200
     */
    public double loopOhm(double temperatureC) {
        double wireOhm = material.resistivityOhmM(temperatureC) * lengthM / (areaMm2 * 1e-6);
        if (wayBack instanceof Return.Chassis chassis) {
            return wireOhm + chassis.resistanceOhm();
        }
        return 2 * wireOhm;
    }
}
