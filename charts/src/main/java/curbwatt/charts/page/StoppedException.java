package curbwatt.charts.page;

/** Work that was given up: something newer took its place, or it took too long. */
final class StoppedException extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final boolean superseded;

    StoppedException(boolean superseded) {
        super(superseded ? "superseded" : "too long");
        this.superseded = superseded;
    }

    /** Whether something newer took its place; otherwise it took too long. */
    boolean superseded() {
        return superseded;
    }
}
