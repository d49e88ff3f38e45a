package curbwatt.scenarios.file;

import java.util.List;
import java.util.Optional;

/**
 * What is asked of the vehicle.
 *
 * @param place where it stands
 * @param hold circuits that must stay supplied
 * @param restartMarginV room above the minimum cranking voltage (V)
 * @param restartAfterParkedH hours parked after the scene, before the engine must start too (h)
 * @param parkedAirC temperature of the air meanwhile (°C)
 * @param noTripIn names of the phases in which no cutoff may open
 * @param leastChargePercent lowest state of charge allowed (percent)
 * @param leastAuxiliaryChargePercent lowest state of charge allowed of the auxiliary battery (percent)
 * @param leastVoltage lowest voltages allowed
 */
public record RequirementsEntry(
        Place place,
        List<HoldEntry> hold,
        Optional<Double> restartMarginV,
        Optional<Double> restartAfterParkedH,
        Optional<Double> parkedAirC,
        List<String> noTripIn,
        Optional<Double> leastChargePercent,
        Optional<Double> leastAuxiliaryChargePercent,
        List<LeastVoltageEntry> leastVoltage) {

    /** Takes missing lists as empty ones. */
    public RequirementsEntry {
        hold = hold == null ? List.of() : List.copyOf(hold);
        noTripIn = noTripIn == null ? List.of() : List.copyOf(noTripIn);
        leastVoltage = leastVoltage == null ? List.of() : List.copyOf(leastVoltage);
    }

    /** Whether nothing is asked. */
    public boolean isEmpty() {
        return hold.isEmpty()
                && leastVoltage.isEmpty()
                && noTripIn.isEmpty()
                && restartMarginV.isEmpty()
                && leastChargePercent.isEmpty()
                && leastAuxiliaryChargePercent.isEmpty();
    }
}
