package curbwatt.charts.run;

import curbwatt.engine.result.RunResult;
import curbwatt.engine.result.Trace;
import curbwatt.engine.result.WaveformPoint;
import curbwatt.engine.verdict.Verdict;
import curbwatt.scenarios.assemble.ReadyScenario;
import java.util.List;

/**
 * A scenario with everything that came out of it.
 *
 * @param scenario what was run
 * @param result what the run handed back
 * @param trace what was recorded along it
 * @param waveform voltage over a few flash cycles at the moment that matters most; empty if nothing flashes
 * @param verdict what was asked and whether it was met
 */
public record RunStory(
        ReadyScenario scenario, RunResult result, Trace trace, List<WaveformPoint> waveform, Verdict verdict) {

    /** Copies the list. */
    public RunStory {
        waveform = List.copyOf(waveform);
    }
}
