package curbwatt.engine.powertrain;

/**
 * Idle fuel of whole classes of vehicle, without accessory load. Source: US Department of Energy, Vehicle Technologies
 * fact #861. The table names no engine speed; the user has to say at which the engine idles.
 */
public enum PublishedIdle {
    /** Compact sedan, petrol, 2.0 L. */
    COMPACT_SEDAN_PETROL(Fuel.PETROL, 0.16),
    /** Large sedan, petrol, 4.6 L. */
    LARGE_SEDAN_PETROL(Fuel.PETROL, 0.39),
    /** Compact sedan, diesel, 2.0 L. */
    COMPACT_SEDAN_DIESEL(Fuel.DIESEL, 0.17),
    /** Medium heavy truck, petrol, 5–7 L. */
    MEDIUM_TRUCK_PETROL(Fuel.PETROL, 0.84),
    /** Delivery truck, diesel. */
    DELIVERY_TRUCK_DIESEL(Fuel.DIESEL, 0.84),
    /** Tow truck, diesel. */
    TOW_TRUCK_DIESEL(Fuel.DIESEL, 0.59),
    /** Medium heavy truck, diesel, 6–10 L. */
    MEDIUM_TRUCK_DIESEL(Fuel.DIESEL, 0.44),
    /** Transit bus, diesel. */
    TRANSIT_BUS_DIESEL(Fuel.DIESEL, 0.97),
    /** Combination truck, diesel. */
    COMBINATION_TRUCK_DIESEL(Fuel.DIESEL, 0.49),
    /** Bucket truck, diesel. */
    BUCKET_TRUCK_DIESEL(Fuel.DIESEL, 0.90),
    /** Tractor with semitrailer, diesel. */
    TRACTOR_SEMITRAILER_DIESEL(Fuel.DIESEL, 0.64);

    private final Fuel fuel;
    private final double gallonsPerH;

    PublishedIdle(Fuel fuel, double gallonsPerH) {
        this.fuel = fuel;
        this.gallonsPerH = gallonsPerH;
    }

    /** What it burns. */
    public Fuel fuel() {
        return fuel;
    }

    /** Idle fuel without accessory load (L/h). */
    public double litresPerH() {
        return gallonsPerH * Fuel.US_GALLON_LITRES;
    }

    /** The published figure taken to hold at an idle speed (1/min), in proportion to speed elsewhere. */
    public IdleBurn burn(double idleRpm) {
        return IdleBurn.through(idleRpm, litresPerH());
    }
}
