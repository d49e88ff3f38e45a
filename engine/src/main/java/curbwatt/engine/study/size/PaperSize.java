package curbwatt.engine.study.size;

import curbwatt.engine.sizing.DutyPeriod;
import curbwatt.engine.sizing.SectionSizing;
import curbwatt.engine.sizing.SizingFactors;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * The size by the paper method, step by step.
 *
 * @param cycle the duty cycle: mean currents of the labels, phase by phase
 * @param endV voltage at which the battery counts as empty, that of its label test (V)
 * @param sections the sections at the end voltage of the label
 * @param factors temperature, margin and ageing
 * @param temperatureC lowest temperature that the factor is for (°C)
 * @param tripV voltage below which the scene is lost: the highest trip level, or drop-out voltage, at the battery (V)
 * @param atTripAh uncorrected size with that as the end voltage (Ah); empty: even a full battery at rest lies below it
 */
public record PaperSize(
        List<DutyPeriod> cycle,
        double endV,
        SectionSizing sections,
        SizingFactors factors,
        double temperatureC,
        double tripV,
        OptionalDouble atTripAh) {

    /** Copies the list. */
    public PaperSize {
        cycle = List.copyOf(cycle);
        Objects.requireNonNull(sections, "sections");
        Objects.requireNonNull(factors, "factors");
        Objects.requireNonNull(atTripAh, "atTripAh");
    }

    /** Charge that the duty cycle draws (Ah). */
    public double chargeAh() {
        return cycle.stream().mapToDouble(DutyPeriod::chargeAh).sum();
    }

    /** Size before corrections (Ah). */
    public double uncorrectedAh() {
        return sections.uncorrectedAh();
    }

    /** The size (Ah). */
    public double capacityAh() {
        return factors.corrected(uncorrectedAh());
    }

    /** The size with the trip level as the end voltage (Ah): what the method gives if told of the cutoff. */
    public OptionalDouble capacityAtTripAh() {
        return atTripAh.isPresent()
                ? OptionalDouble.of(factors.corrected(atTripAh.getAsDouble()))
                : OptionalDouble.empty();
    }
}
