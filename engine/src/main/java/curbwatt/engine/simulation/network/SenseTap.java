package curbwatt.engine.simulation.network;

import curbwatt.engine.simulation.part.OperatingPoint;

/**
 * A place in the network where a voltage is taken.
 *
 * @param circuit place of the circuit at whose far end it is taken; below 0: at a node
 * @param equipment whether that node is the equipment node
 */
public record SenseTap(int circuit, boolean equipment) {

    public static SenseTap starterNode() {
        return new SenseTap(-1, false);
    }

    public static SenseTap equipmentNode() {
        return new SenseTap(-1, true);
    }

    public static SenseTap feedEnd(int circuit) {
        return new SenseTap(circuit, false);
    }

    public double voltageV(OperatingPoint point) {
        if (circuit >= 0) {
            return point.farV[circuit];
        }
        return equipment ? point.equipment.nodeV : point.starter.nodeV;
    }
}
