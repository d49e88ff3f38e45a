package curbwatt.scenarios.assemble;

import curbwatt.engine.control.LowVoltageCutoff;
import curbwatt.engine.control.RecloseRule;
import curbwatt.engine.control.SheddingStep;
import curbwatt.engine.control.StagedCutoff;
import curbwatt.scenarios.file.CutoffEntry;
import curbwatt.scenarios.file.RecloseEntry;
import curbwatt.scenarios.file.StepEntry;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * From a cutoff entry to the devices that it stands for: its steps and itself.
 *
 * @param guarded catches what the engine refuses
 */
record CutoffAssembler(Guarded guarded) {
    private static final double MINUTE_S = 60;

    /** Returns the devices, the steps first. */
    List<LowVoltageCutoff> devices(CutoffEntry entry) {
        return guarded.build(
                entry.place(),
                () -> new StagedCutoff(
                                cutoff(entry),
                                entry.steps().stream()
                                        .map(CutoffAssembler::step)
                                        .toList(),
                                Set.of())
                        .devices());
    }

    private static LowVoltageCutoff cutoff(CutoffEntry entry) {
        return new LowVoltageCutoff(
                entry.name().orElseThrow(),
                SensePlace.of(entry.senseAtNode(), entry.senseAtFeedEndOf()),
                entry.filterS().orElse(0.0),
                entry.sensorErrorV().orElse(0.0),
                optional(entry.warningV()),
                entry.tripV().orElseThrow(),
                entry.tripDelayS().orElse(0.0),
                reclose(entry.reclose()),
                optional(entry.runTimeLimitMin().map(limitMin -> limitMin * MINUTE_S)),
                Set.copyOf(entry.disconnects()));
    }

    private static SheddingStep step(StepEntry entry) {
        return new SheddingStep(
                entry.name().orElseThrow(),
                entry.tripV().orElseThrow(),
                entry.tripDelayS().orElse(0.0),
                reclose(entry.reclose()),
                Set.copyOf(entry.disconnects()));
    }

    private static RecloseRule reclose(Optional<RecloseEntry> entry) {
        return entry.map(CutoffAssembler::reclose).orElseGet(RecloseRule.ByHand::new);
    }

    /** A rule of closing, of a cutoff or among those that a study tries. */
    static RecloseRule reclose(RecloseEntry reclose) {
        return switch (reclose.when().orElseThrow()) {
            case ABOVE_VOLTAGE ->
                new RecloseRule.AboveVoltage(
                        reclose.aboveV().orElseThrow(), reclose.delayS().orElse(0.0));
            case ENGINE_RUNNING -> new RecloseRule.EngineRunning();
            case BY_HAND -> new RecloseRule.ByHand();
        };
    }

    private static OptionalDouble optional(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }
}
