package curbwatt.scenarios.assemble;

import curbwatt.engine.study.size.SizePlan;
import curbwatt.engine.study.size.Spread;
import curbwatt.scenarios.file.SizeEntry;
import java.util.Optional;
import java.util.OptionalDouble;

/** From an entry to what a battery is sized for. */
final class SizePlans {
    private static final double PERCENT = 100;

    private SizePlans() {}

    /** Returns the plan, with the usual for what is left out. */
    static SizePlan of(SizeEntry entry) {
        SizePlan usual = SizePlan.usual();
        return new SizePlan(
                optional(entry.capacityHealthPercent().map(SizePlans::share)),
                optional(entry.resistanceGrowthFactor()),
                optional(entry.batteryC()),
                entry.oddsPercent().map(SizePlans::share).orElse(usual.oddsFraction()),
                entry.draws().orElse(usual.draws()),
                new Spread(
                        entry.temperatureSdK().orElse(usual.spread().temperatureK()),
                        entry.capacitySdPercent()
                                .map(SizePlans::share)
                                .orElse(usual.spread().capacityFraction()),
                        entry.loadSdPercent()
                                .map(SizePlans::share)
                                .orElse(usual.spread().loadFraction())),
                entry.marginFactor().orElse(usual.marginFactor()));
    }

    private static double share(double percent) {
        return percent / PERCENT;
    }

    private static OptionalDouble optional(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }
}
