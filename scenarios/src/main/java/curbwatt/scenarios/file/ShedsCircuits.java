package curbwatt.scenarios.file;

import java.util.List;
import java.util.Optional;

/** A contact that opens on low voltage: a cutoff, or a step before it. */
public sealed interface ShedsCircuits permits CutoffEntry, StepEntry {

    /** Where it stands. */
    Place place();

    /** As the user calls it. */
    Optional<String> name();

    /** Level below which it opens (V). */
    Optional<Double> tripV();

    /** Time below it before it opens (s). */
    Optional<Double> tripDelayS();

    /** What closes it again. */
    Optional<RecloseEntry> reclose();

    /** Circuits that it disconnects. */
    List<String> disconnects();
}
