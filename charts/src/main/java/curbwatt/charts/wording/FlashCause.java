package curbwatt.charts.wording;

import curbwatt.charts.run.FlashComparison;
import curbwatt.charts.run.TimedRun;
import curbwatt.engine.control.LowVoltageCutoff;
import curbwatt.engine.load.Load;
import curbwatt.engine.load.LoadPattern;
import curbwatt.engine.result.WaveformPoint;

/**
 * Why a trip comes earlier or later when heads are timed otherwise, as far as the shape of the voltage says it.
 *
 * @param comparison the runs
 * @param sameV voltages nearer than this are the same (V)
 */
record FlashCause(FlashComparison comparison, double sameV) {

    /**
     * A clause that begins with a comma; empty where the shape does not explain it.
     *
     * <p>A cutoff that is slower than the flashes waits for the highest voltage of the cycle, because each rise above
     * the trip level starts its delay anew; one that is quicker than a flash acts on the lowest. A filter that is
     * slower than the flashes sees neither.
     *
     * @param cutoff the cutoff that trips; the shape of its sensed voltage is known for the first one alone
     * @param laterS how much later it trips with the heads interleaved (s)
     */
    String because(String cutoff, double laterS) {
        LowVoltageCutoff first =
                comparison.together().story().scenario().vehicle().cutoffs().get(0);
        if (!first.name().equals(cutoff) || !comparison.isCloseUpWhole() || first.filterTimeConstantS() > periodS()) {
            return "";
        }
        if (first.tripDelayS() >= periodS()) {
            return clause(
                    laterS,
                    highestV(comparison.together()),
                    highestV(comparison.interleaved()),
                    "between flashes the voltage comes up to ",
                    ", and each rise above the trip level starts its delay anew");
        }
        return first.tripDelayS() < shortestOnS()
                ? clause(
                        laterS,
                        lowestV(comparison.together()),
                        lowestV(comparison.interleaved()),
                        "in a flash the voltage goes down to ",
                        ", and its delay is shorter than a flash")
                : "";
    }

    private String clause(double laterS, double togetherV, double apartV, String what, String rule) {
        boolean explains = Math.abs(apartV - togetherV) > sameV && (apartV > togetherV) == (laterS > 0);
        return explains
                ? ", because " + what + PlainText.volts(apartV) + " instead of " + PlainText.volts(togetherV) + " ("
                        + PlainText.after(comparison.closeUp().fromS()) + ")" + rule
                : "";
    }

    private double highestV(TimedRun run) {
        return comparison.statistics(run, WaveformPoint::sensedV).getMax();
    }

    private double lowestV(TimedRun run) {
        return comparison.statistics(run, WaveformPoint::sensedV).getMin();
    }

    private double periodS() {
        return comparison.heads().stream()
                        .map(Load::pattern)
                        .mapToDouble(pattern ->
                                ((LoadPattern.Flashing) pattern).clock().periodMs())
                        .max()
                        .orElseThrow()
                / 1000;
    }

    private double shortestOnS() {
        return comparison.heads().stream()
                        .map(Load::pattern)
                        .flatMap(pattern -> ((LoadPattern.Flashing) pattern).onIntervals().stream())
                        .mapToDouble(on -> on.lengthMs())
                        .min()
                        .orElseThrow()
                / 1000;
    }
}
