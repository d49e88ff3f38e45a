package curbwatt.engine.simulation.envelope;

import curbwatt.engine.simulation.network.SenseTap;
import curbwatt.engine.simulation.part.NodePoint;
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
    private boolean oneWay;

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
            oneWay = isOneWay(step);
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
                if (!oneWay) {
                    addBatteries(k, fromS, share / 6);
                    addBatteries(k, 0.5 * (fromS + toS), 4 * share / 6);
                    addBatteries(k, toS, share / 6);
                }
            }
            if (occurrences.occurs(k)
                    && averages.mayNote(step.start().points[k], step.middle().points[k], step.end().points[k])) {
                note(k, occurrences.firstS(k));
                note(k, 0.5 * (occurrences.firstS(k) + occurrences.lastS(k)));
                note(k, occurrences.lastS(k));
            }
        }
        if (oneWay) {
            averages.addBatteries(averages.mean.starter.batteryA(), averages.mean.equipment.batteryA(), 1);
        }
        if (share(toS) > 1 - SAME_SHARE) {
            readings.take(step.states().end);
        } else {
            readings.pass(averages.mean, toS - fromS, step.states().at(share(toS)));
        }
    }

    /** Whether no battery changes between giving and taking within the step: then the mean says what it gave or took. */
    private static boolean isOneWay(LongStep step) {
        double lowA = 0;
        double highA = 0;
        double equipmentLowA = 0;
        double equipmentHighA = 0;
        for (int k = 0; k < step.pattern().size(); k++) {
            OperatingPoint first = step.start().points[k];
            OperatingPoint middle = step.middle().points[k];
            OperatingPoint last = step.end().points[k];
            lowA = Math.min(lowA, lowA(first.starter, middle.starter, last.starter));
            highA = Math.max(highA, highA(first.starter, middle.starter, last.starter));
            equipmentLowA = Math.min(equipmentLowA, lowA(first.equipment, middle.equipment, last.equipment));
            equipmentHighA = Math.max(equipmentHighA, highA(first.equipment, middle.equipment, last.equipment));
        }
        return lowA * highA == 0 && equipmentLowA * equipmentHighA == 0;
    }

    private static double lowA(NodePoint first, NodePoint middle, NodePoint last) {
        return Parabola.floor(first.batteryA(), middle.batteryA(), last.batteryA());
    }

    private static double highA(NodePoint first, NodePoint middle, NodePoint last) {
        return Parabola.ceiling(first.batteryA(), middle.batteryA(), last.batteryA());
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
