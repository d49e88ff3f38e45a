package curbwatt.engine.study;

import curbwatt.engine.control.LowVoltageCutoff;
import curbwatt.engine.simulation.Simulation;
import java.util.List;
import java.util.Objects;
import java.util.function.UnaryOperator;

/**
 * Changes one cutoff.
 *
 * @param cutoff its name
 * @param change what becomes of it; keeps the name
 */
public record CutoffSetting(String cutoff, UnaryOperator<LowVoltageCutoff> change) implements Variation {

    /** Refuses missing parts. */
    public CutoffSetting {
        Objects.requireNonNull(cutoff, "cutoff");
        Objects.requireNonNull(change, "change");
    }

    /** Another trip level (V) and delay (s). */
    public static CutoffSetting trip(String cutoff, double tripV, double tripDelayS) {
        return new CutoffSetting(cutoff, settings -> settings.tripping(tripV, tripDelayS));
    }

    @Override
    public Simulation of(Simulation base) {
        List<LowVoltageCutoff> cutoffs = base.vehicle().cutoffs();
        if (cutoffs.stream().noneMatch(settings -> settings.name().equals(cutoff))) {
            throw new IllegalArgumentException("there is no cutoff '" + cutoff + "'; there are "
                    + cutoffs.stream().map(LowVoltageCutoff::name).toList());
        }
        return base.with(base.vehicle()
                .withCutoffs(cutoffs.stream()
                        .map(settings -> settings.name().equals(cutoff) ? change.apply(settings) : settings)
                        .toList()));
    }
}
