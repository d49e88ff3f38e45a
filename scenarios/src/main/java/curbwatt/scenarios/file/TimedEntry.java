package curbwatt.scenarios.file;

import java.util.Optional;

/** A point of a profile. */
public sealed interface TimedEntry permits AirEntry, SpeedEntry {

    /** Where it stands. */
    Place place();

    /** Time since the phase's start (min). */
    Optional<Double> atMin();
}
