package curbwatt.engine.simulation.envelope;

import curbwatt.engine.simulation.network.SenseTap;
import curbwatt.engine.simulation.part.OperatingPoint;
import curbwatt.engine.simulation.part.Parabola;
import java.util.List;

/** A part of a long step: its ends, its means and its extremes; filled anew for each. */
final class Stretch {

    private static final double SAME_SHARE = 1e-6;

    final OperatingPoint start;
    final OperatingPoint end;
    final Averages averages;
    /** The batteries at its end. */
    final BatteryReadings readings = new BatteryReadings();

    private final Envelope envelope;
    private final Occurrences occurrences = new Occurrences();
    private double startS;
    private double endS;
    private double chargeStartFraction;

    Stretch(Envelope envelope, int circuits, List<SenseTap> taps) {
        this.envelope = envelope;
        start = new OperatingPoint(circuits);
        end = new OperatingPoint(circuits);
        averages = new Averages(circuits, taps);
    }

    /** Becomes a part of the step found. */
    void fill(double fromS, double toS) {
        LongStep step = envelope.step();
        startS = fromS;
        endS = toS;
        step.at(fromS, start);
        step.at(toS - Envelope.BEFORE_EDGE_S, end);
        if (fromS == step.startS()) {
            readings.take(step.states().start);
        }
        chargeStartFraction = readings.charge();
        averages.clear();
        averages.note(start);
        averages.note(end);
        occurrences.look(step.pattern(), fromS, toS);
        Parabola mean = Parabola.mean(share(fromS), share(toS));
        for (int k = 0; k < step.pattern().size(); k++) {
            double share = occurrences.share(k);
            if (share > 0) {
                averages.add(mean, step.start().points[k], step.middle().points[k], step.end().points[k], share);
                addBatteries(k, fromS, share / 6);
                addBatteries(k, 0.5 * (fromS + toS), 4 * share / 6);
                addBatteries(k, toS, share / 6);
            }
            if (occurrences.occurs(k)
                    && averages.mayNote(step.start().points[k], step.middle().points[k], step.end().points[k])) {
                note(k, occurrences.firstS(k));
                note(k, 0.5 * (occurrences.firstS(k) + occurrences.lastS(k)));
                note(k, occurrences.lastS(k));
            }
        }
        if (share(toS) > 1 - SAME_SHARE) {
            readings.take(step.states().end);
        } else {
            readings.pass(averages.mean, toS - fromS, step.states().at(share(toS)));
        }
    }

    private void addBatteries(int k, double timeS, double weight) {
        Parabola at = Parabola.at(share(timeS));
        OperatingPoint first = envelope.step().start().points[k];
        OperatingPoint middle = envelope.step().middle().points[k];
        OperatingPoint last = envelope.step().end().points[k];
        averages.addBatteries(
                at.through(first.starter.batteryA(), middle.starter.batteryA(), last.starter.batteryA()),
                at.through(first.equipment.batteryA(), middle.equipment.batteryA(), last.equipment.batteryA()),
                weight);
    }

    private void note(int k, double timeS) {
        LongStep step = envelope.step();
        averages.note(Parabola.at(share(timeS)), step.start().points[k], step.middle().points[k], step.end().points[k]);
    }

    private double share(double timeS) {
        return (timeS - envelope.step().startS()) / envelope.step().lengthS();
    }

    double startS() {
        return startS;
    }

    double endS() {
        return endS;
    }

    /** State of charge of the starter battery at the start. */
    double chargeStartFraction() {
        return chargeStartFraction;
    }
}
