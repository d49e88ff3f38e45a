package curbwatt.charts.run;

import curbwatt.engine.result.RunResult;
import curbwatt.engine.result.Trace;
import curbwatt.engine.result.WaveformPoint;
import curbwatt.engine.vehicle.BusNode;
import curbwatt.engine.verdict.Verdict;
import curbwatt.scenarios.assemble.ReadyScenario;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A scenario with everything that came out of it.
 *
 * @param scenario what was run
 * @param result what the run handed back
 * @param trace what was recorded along it
 * @param waveform voltage over a few flash cycles at the moment that matters most; empty if nothing flashes
 * @param verdict what was asked and whether it was met
 * @param flashing the same with other timings of the heads; empty if there are no heads to time
 */
public record RunStory(
        ReadyScenario scenario,
        RunResult result,
        Trace trace,
        List<WaveformPoint> waveform,
        Verdict verdict,
        Optional<FlashComparison> flashing) {

    /** A run that is compared with no other. */
    public RunStory(
            ReadyScenario scenario, RunResult result, Trace trace, List<WaveformPoint> waveform, Verdict verdict) {
        this(scenario, result, trace, waveform, verdict, Optional.empty());
    }

    /** Copies the list. */
    public RunStory {
        Objects.requireNonNull(flashing, "flashing");
        waveform = List.copyOf(waveform);
    }

    /** The node whose voltage swings more in the close-up: the one that flashing loads hang on. */
    public BusNode closeUpNode() {
        boolean equipment =
                waveform.stream().anyMatch(point -> point.equipmentV().isPresent())
                        && swingV(BusNode.EQUIPMENT) >= swingV(BusNode.STARTER);
        return equipment ? BusNode.EQUIPMENT : BusNode.STARTER;
    }

    /** Voltage of a node at a point of a close-up (V). */
    public static double nodeV(WaveformPoint point, BusNode node) {
        return node == BusNode.EQUIPMENT ? point.equipmentV().orElseThrow() : point.nodeV();
    }

    private double swingV(BusNode node) {
        DoubleSummaryStatistics voltage =
                waveform.stream().mapToDouble(point -> nodeV(point, node)).summaryStatistics();
        return voltage.getMax() - voltage.getMin();
    }
}
