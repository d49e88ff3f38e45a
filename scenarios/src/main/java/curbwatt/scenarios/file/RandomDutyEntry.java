package curbwatt.scenarios.file;

import java.util.Optional;

/**
 * On for some seconds at random instants.
 *
 * @param place where it stands
 * @param onS length of each on-time (s)
 * @param everyS mean time from one on-time to the next (s)
 * @param betweenCurrentA current between the on-times, each (A)
 * @param seed which of all such sequences
 */
public record RandomDutyEntry(
        Place place,
        Optional<Double> onS,
        Optional<Double> everyS,
        Optional<Double> betweenCurrentA,
        Optional<Integer> seed) {}
