package curbwatt.scenarios.file;

import java.util.Optional;

/**
 * What the standing engine burns.
 *
 * @param place where it stands
 * @param fuel what it burns
 * @param idleLitresPerHour fuel without electrical load (L/h)
 * @param atRpm engine speed of that figure (1/min)
 * @param alternatorEfficiencyPercent electrical output of the alternator over shaft power (percent)
 */
public record EngineEntry(
        Place place,
        Optional<FuelWord> fuel,
        Optional<Double> idleLitresPerHour,
        Optional<Double> atRpm,
        Optional<Double> alternatorEfficiencyPercent) {}
