package curbwatt.engine.simulation.record;

import curbwatt.engine.result.EquipmentSample;

/** The equipment node's part of the line that a trace is gathering. */
final class EquipmentLine {

    private double minV;
    private double maxV;
    private double voltSeconds;
    private double batteryAs;
    private double linkAs;

    EquipmentLine() {
        clear();
    }

    public void clear() {
        minV = Double.POSITIVE_INFINITY;
        maxV = Double.NEGATIVE_INFINITY;
        voltSeconds = 0;
        batteryAs = 0;
        linkAs = 0;
    }

    public void add(Step step, double fromShare, double toShare, double lengthS) {
        boolean straight = step.isStraight();
        double fromV = straight ? at(step, fromShare) : step.equipmentLowestV();
        double toV = straight ? at(step, toShare) : step.equipmentHighestV();
        minV = Math.min(minV, Math.min(fromV, toV));
        maxV = Math.max(maxV, Math.max(fromV, toV));
        voltSeconds += lengthS * (straight ? 0.5 * (fromV + toV) : step.equipmentMeanV());
        batteryAs += lengthS * step.auxiliaryA();
        linkAs += lengthS * step.linkA();
    }

    public EquipmentSample sample(Step step, double share, double coveredS) {
        double nodeV = at(step, share);
        boolean instant = coveredS == 0;
        return new EquipmentSample(
                nodeV,
                minV,
                instant ? nodeV : voltSeconds / coveredS,
                maxV,
                instant ? step.auxiliaryA() : batteryAs / coveredS,
                instant ? step.linkA() : linkAs / coveredS,
                step.auxiliaryChargeEndFraction(),
                step.auxiliaryC());
    }

    private static double at(Step step, double share) {
        return step.equipmentStartV() + share * (step.equipmentEndV() - step.equipmentStartV());
    }
}
