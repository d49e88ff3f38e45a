package curbwatt.scenarios.file;

import java.util.Optional;

/** How a figure is spread, in whatever unit. */
public sealed interface SpreadEntry permits PercentSpreadEntry, KelvinSpreadEntry, VoltSpreadEntry {

    /** Where it stands. */
    Place place();

    /** The shape. */
    Optional<SpreadWord> distribution();

    /** Most likely value, in the file's unit. */
    Optional<Double> likeliest();

    /** Standard deviation, in the file's unit. */
    Optional<Double> sd();

    /** Least value, in the file's unit. */
    Optional<Double> from();

    /** Greatest value, in the file's unit. */
    Optional<Double> to();

    /** What its keys end with. */
    String ending();

    /** How many of the engine's units make one of the file's. */
    double scale();
}
