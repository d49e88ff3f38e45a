package curbwatt.engine.event;

import java.util.Objects;

/**
 * One thing that happened in a run.
 *
 * @param timeS time since the scene's start (s)
 * @param kind what happened
 * @param subject name of the part or phase it happened to
 * @param voltageV voltage that the subject saw just before: the sensed voltage for a cutoff, a load's own voltage for a
 *     load, the lowest cranking voltage for an engine start, the node voltage otherwise (V)
 * @param stateOfChargeFraction state of charge of the battery, 0 … 1
 */
public record Event(double timeS, EventKind kind, String subject, double voltageV, double stateOfChargeFraction) {

    /** Refuses a missing kind or subject. */
    public Event {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(subject, "subject");
    }
}
