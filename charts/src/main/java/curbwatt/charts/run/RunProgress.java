package curbwatt.charts.run;

import curbwatt.engine.simulation.record.Recorder;
import curbwatt.engine.simulation.record.Step;
import java.util.function.DoubleConsumer;

/**
 * Tells how far a run has come; keeps nothing.
 *
 * @param durationS length of the run (s)
 * @param heard hears the share of the run that is done, 0 … 1, at every step
 */
record RunProgress(double durationS, DoubleConsumer heard) implements Recorder {

    @Override
    public void record(Step step) {
        heard.accept(step.endS() / durationS);
    }
}
