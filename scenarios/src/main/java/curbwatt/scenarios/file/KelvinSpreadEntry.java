package curbwatt.scenarios.file;

import java.util.Optional;

/**
 * How a figure is spread, in kelvins above what the scenario says.
 *
 * @param place where it stands
 * @param distribution the shape
 * @param likeliestK most likely value (K)
 * @param sdK standard deviation (K)
 * @param fromK least value (K)
 * @param toK greatest value (K)
 */
public record KelvinSpreadEntry(
        Place place,
        Optional<SpreadWord> distribution,
        Optional<Double> likeliestK,
        Optional<Double> sdK,
        Optional<Double> fromK,
        Optional<Double> toK)
        implements SpreadEntry {

    @Override
    public Optional<Double> likeliest() {
        return likeliestK;
    }

    @Override
    public Optional<Double> sd() {
        return sdK;
    }

    @Override
    public Optional<Double> from() {
        return fromK;
    }

    @Override
    public Optional<Double> to() {
        return toK;
    }

    @Override
    public String ending() {
        return "K";
    }

    @Override
    public double scale() {
        return 1;
    }
}
