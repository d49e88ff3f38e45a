package curbwatt.charts.run;

import curbwatt.engine.load.Load;
import curbwatt.engine.result.WaveformPoint;
import curbwatt.engine.vehicle.BusNode;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * The same scene with the heads on shared clocks flashing together, as written, and interleaved.
 *
 * @param heads the loads whose timing is compared
 * @param node node that they hang on; the equipment node if they hang on both
 * @param closeUp the few cycles that are looked at in every run
 * @param runs two or three runs, together first, interleaved last
 */
public record FlashComparison(List<Load> heads, BusNode node, CloseUp closeUp, List<TimedRun> runs) {

    /** Copies the lists. */
    public FlashComparison {
        heads = List.copyOf(heads);
        runs = List.copyOf(runs);
    }

    /** All heads at once. */
    public TimedRun together() {
        return runs.get(0);
    }

    /** One group after the other. */
    public TimedRun interleaved() {
        return runs.get(runs.size() - 1);
    }

    /** Whether every run still holds everything in the close-up, so that the close-ups can be compared. */
    public boolean isCloseUpWhole() {
        return runs.stream().allMatch(run -> run.heldS() > closeUp.toS());
    }

    /** From the highest to the lowest voltage of the heads' node in the close-up (V); empty: not comparable. */
    public OptionalDouble sagV(TimedRun run) {
        DoubleSummaryStatistics voltage = statistics(run, this::nodeV);
        return isCloseUpWhole() ? OptionalDouble.of(voltage.getMax() - voltage.getMin()) : OptionalDouble.empty();
    }

    /** A figure of a run in the close-up. */
    public DoubleSummaryStatistics statistics(TimedRun run, ToDoubleFunction<WaveformPoint> what) {
        return run.story().waveform().stream().mapToDouble(what).summaryStatistics();
    }

    /** Voltage of the heads' node (V). */
    public double nodeV(WaveformPoint point) {
        return RunStory.nodeV(point, node);
    }

    /** Lowest voltage of the heads' node in the whole run (V). */
    public double lowestV(TimedRun run) {
        return node == BusNode.EQUIPMENT
                ? run.story().result().batteries().get(1).lowestV()
                : run.story().result().lowestV();
    }
}
