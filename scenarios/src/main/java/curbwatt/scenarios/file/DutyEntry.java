package curbwatt.scenarios.file;

import java.util.Optional;

/**
 * On for some seconds in every so many.
 *
 * @param place where it stands
 * @param onS length of the on-time (s)
 * @param everyS length of the cycle (s)
 * @param offsetS start of the first on-time (s)
 * @param betweenCurrentA current between the on-times, each (A)
 */
public record DutyEntry(
        Place place,
        Optional<Double> onS,
        Optional<Double> everyS,
        Optional<Double> offsetS,
        Optional<Double> betweenCurrentA) {}
