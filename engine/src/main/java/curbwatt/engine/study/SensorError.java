package curbwatt.engine.study;

import curbwatt.engine.simulation.Simulation;

/**
 * Every cutoff reads so much more than its settings say already.
 *
 * @param errorV what is read too much (V), −1 … 1 together with what the settings have
 */
public record SensorError(double errorV) implements Variation {

    @Override
    public Simulation of(Simulation base) {
        return base.with(base.vehicle()
                .withCutoffs(base.vehicle().cutoffs().stream()
                        .map(cutoff -> cutoff.readingTooHighBy(cutoff.sensorErrorV() + errorV))
                        .toList()));
    }
}
