package curbwatt.charts.page;

/** A question that is not answered, with the status and the sentence that say why. */
final class RefusedException extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final int status;

    RefusedException(int status, String message) {
        super(message);
        this.status = status;
    }

    int status() {
        return status;
    }
}
