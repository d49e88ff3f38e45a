package curbwatt.scenarios.file;

import java.util.Optional;

/**
 * How a figure is spread, in percent of what the scenario says.
 *
 * @param place where it stands
 * @param distribution the shape
 * @param likeliestPercent most likely value (%)
 * @param sdPercent standard deviation (%)
 * @param fromPercent least value (%)
 * @param toPercent greatest value (%)
 */
public record PercentSpreadEntry(
        Place place,
        Optional<SpreadWord> distribution,
        Optional<Double> likeliestPercent,
        Optional<Double> sdPercent,
        Optional<Double> fromPercent,
        Optional<Double> toPercent)
        implements SpreadEntry {

    @Override
    public Optional<Double> likeliest() {
        return likeliestPercent;
    }

    @Override
    public Optional<Double> sd() {
        return sdPercent;
    }

    @Override
    public Optional<Double> from() {
        return fromPercent;
    }

    @Override
    public Optional<Double> to() {
        return toPercent;
    }

    @Override
    public String ending() {
        return "Percent";
    }

    @Override
    public double scale() {
        return 0.01;
    }
}
