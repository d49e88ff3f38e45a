package curbwatt.engine.battery.label;

/** Says that the figures of a label contradict each other, which ones, and what would be possible. */
public final class InfeasibleLabelException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    InfeasibleLabelException(String message) {
        super(message);
    }
}
