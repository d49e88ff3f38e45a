package curbwatt.scenarios.file;

import java.util.Optional;

/**
 * How a figure is spread, in volts above what the scenario says.
 *
 * @param place where it stands
 * @param distribution the shape
 * @param likeliestV most likely value (V)
 * @param sdV standard deviation (V)
 * @param fromV least value (V)
 * @param toV greatest value (V)
 */
public record VoltSpreadEntry(
        Place place,
        Optional<SpreadWord> distribution,
        Optional<Double> likeliestV,
        Optional<Double> sdV,
        Optional<Double> fromV,
        Optional<Double> toV)
        implements SpreadEntry {

    @Override
    public Optional<Double> likeliest() {
        return likeliestV;
    }

    @Override
    public Optional<Double> sd() {
        return sdV;
    }

    @Override
    public Optional<Double> from() {
        return fromV;
    }

    @Override
    public Optional<Double> to() {
        return toV;
    }

    @Override
    public String ending() {
        return "V";
    }

    @Override
    public double scale() {
        return 1;
    }
}
