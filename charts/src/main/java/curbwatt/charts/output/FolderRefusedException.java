package curbwatt.charts.output;

/** Says why a folder can't be written to without harm to what is there. */
public final class FolderRefusedException extends RuntimeException {
    private static final long serialVersionUID = 1;

    FolderRefusedException(String message) {
        super(message);
    }
}
