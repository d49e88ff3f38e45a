package curbwatt.engine.simulation;

/**
 * A place in the network where a voltage is taken.
 *
 * @param circuit place of the circuit at whose far end it is taken; below 0: at a node
 * @param equipment whether that node is the equipment node
 */
record SenseTap(int circuit, boolean equipment) {

    static SenseTap starterNode() {
        return new SenseTap(-1, false);
    }

    static SenseTap equipmentNode() {
        return new SenseTap(-1, true);
    }

    static SenseTap feedEnd(int circuit) {
        return new SenseTap(circuit, false);
    }

    double voltageV(OperatingPoint point) {
        if (circuit >= 0) {
            return point.farV[circuit];
        }
        return equipment ? point.equipment.nodeV : point.starter.nodeV;
    }
}
