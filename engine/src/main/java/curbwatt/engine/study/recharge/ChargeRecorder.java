package curbwatt.engine.study.recharge;

import curbwatt.engine.simulation.record.Recorder;
import curbwatt.engine.simulation.record.Step;
import java.util.ArrayList;
import java.util.List;

/** Keeps the charge of the batteries from a time on, not more densely than a minute. */
final class ChargeRecorder implements Recorder {

    private static final double SPACING_S = 60;

    private final double fromS;
    private final List<ChargePoint> points = new ArrayList<>();

    /**
     * Makes a recorder.
     *
     * @param fromS when recharging begins, since the scene's start (s)
     */
    ChargeRecorder(double fromS) {
        this.fromS = fromS;
    }

    @Override
    public void record(Step step) {
        double timeS = step.endS() - fromS;
        double lastS = points.isEmpty() ? 0 : points.get(points.size() - 1).timeS();
        if (timeS - lastS >= SPACING_S) {
            points.add(new ChargePoint(
                    timeS,
                    step.hasEquipmentNode()
                            ? List.of(step.chargeEndFraction(), step.auxiliaryChargeEndFraction())
                            : List.of(step.chargeEndFraction()),
                    step.alternatorA()));
        }
    }

    @Override
    public double nextLineS(double timeS) {
        // long steps of a steady stretch would otherwise leave the curve to be guessed
        return timeS < fromS ? Double.POSITIVE_INFINITY : timeS + 5 * SPACING_S;
    }

    /** What was kept up to a time of recharging (s); the batteries as the scene left them come first. */
    List<ChargePoint> points(List<Missing> missing, double untilS) {
        List<ChargePoint> all = new ArrayList<>();
        all.add(new ChargePoint(0, missing.stream().map(Missing::endFraction).toList(), 0));
        points.stream().filter(point -> point.timeS() <= untilS).forEach(all::add);
        return List.copyOf(all);
    }
}
