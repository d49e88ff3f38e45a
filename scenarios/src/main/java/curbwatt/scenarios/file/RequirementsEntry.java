package curbwatt.scenarios.file;

import java.util.List;
import java.util.Optional;

/**
 * What is asked of the vehicle.
 *
 * @param place where it stands
 * @param hold circuits that must stay supplied
 * @param restartMarginV room above the minimum cranking voltage (V)
 * @param leastChargePercent lowest state of charge allowed (percent)
 * @param leastAuxiliaryChargePercent lowest state of charge allowed of the auxiliary battery (percent)
 * @param leastVoltage lowest voltages allowed
 */
public record RequirementsEntry(
        Place place,
        List<HoldEntry> hold,
        Optional<Double> restartMarginV,
        Optional<Double> leastChargePercent,
        Optional<Double> leastAuxiliaryChargePercent,
        List<LeastVoltageEntry> leastVoltage) {

    /** Takes missing lists as empty ones. */
    public RequirementsEntry {
        hold = hold == null ? List.of() : List.copyOf(hold);
        leastVoltage = leastVoltage == null ? List.of() : List.copyOf(leastVoltage);
    }

    /** Whether nothing is asked. */
    public boolean isEmpty() {
        return hold.isEmpty()
                && leastVoltage.isEmpty()
                && restartMarginV.isEmpty()
                && leastChargePercent.isEmpty()
                && leastAuxiliaryChargePercent.isEmpty();
    }
}
