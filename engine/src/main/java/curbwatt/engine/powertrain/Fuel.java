package curbwatt.engine.powertrain;

/**
 * What the engine burns, and what shaft work costs on top of idling.
 *
 * <p>The slope is the Willans slope: fuel for one more kilowatt-hour at the shaft of an engine that runs anyway. Source
 * of slopes: European Commission implementing decision 2020/728 (eco-innovation method).
 *
 * <p>Two consistent sets of carbon factors are held apart on purpose, for they differ by 0.8 % (petrol) and 1.8 %
 * (diesel): comparing one vehicle's total by one set with another's by the other is a trap.
 */
public enum Fuel {
    /** Petrol, naturally aspirated. */
    PETROL(0.264, 2330, 8887),
    /** Petrol, turbocharged. */
    PETROL_TURBO(0.280, 2330, 8887),
    /** Diesel. */
    DIESEL(0.220, 2640, 10180);

    /** Litres in a US gallon, exact. */
    public static final double US_GALLON_LITRES = 3.785411784;

    /** Whose carbon factors. */
    public enum CarbonSet {
        /** The set that belongs to the slopes: 2330 g/L petrol, 2640 g/L diesel (decision 2020/728). */
        EUROPEAN,
        /** US Environmental Protection Agency: 8887 g/gal petrol, 10180 g/gal diesel. */
        AMERICAN
    }

    private final double slopeLitresPerKwh;
    private final double europeanGramsPerLitre;
    private final double americanGramsPerGallon;

    Fuel(double slopeLitresPerKwh, double europeanGramsPerLitre, double americanGramsPerGallon) {
        this.slopeLitresPerKwh = slopeLitresPerKwh;
        this.europeanGramsPerLitre = europeanGramsPerLitre;
        this.americanGramsPerGallon = americanGramsPerGallon;
    }

    /** Fuel for one more kilowatt-hour at the engine's shaft (L/kWh). */
    public double slopeLitresPerKwh() {
        return slopeLitresPerKwh;
    }

    /** Carbon dioxide from one litre (g/L). */
    public double carbonDioxideGramsPerLitre(CarbonSet set) {
        return switch (set) {
            case EUROPEAN -> europeanGramsPerLitre;
            case AMERICAN -> americanGramsPerGallon / US_GALLON_LITRES;
        };
    }
}
