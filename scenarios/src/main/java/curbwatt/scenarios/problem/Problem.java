package curbwatt.scenarios.problem;

import java.util.Objects;

/**
 * Something wrong with an input.
 *
 * @param severity whether it stops the work
 * @param position where it stands
 * @param message what was found and why it can't be
 * @param remedy what would be right, nearest name included; may be empty
 */
public record Problem(Severity severity, SourcePosition position, String message, String remedy) {

    /** Whether a problem stops the work. */
    public enum Severity {
        /** The input can't be used. */
        ERROR,
        /** The input can be used, but a reader should look at it. */
        WARNING
    }

    /** Refuses missing parts. */
    public Problem {
        Objects.requireNonNull(severity, "severity");
        Objects.requireNonNull(position, "position");
        Objects.requireNonNull(message, "message");
        Objects.requireNonNull(remedy, "remedy");
    }
}
