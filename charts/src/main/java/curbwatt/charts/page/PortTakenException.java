package curbwatt.charts.page;

/** The port is not free. */
public final class PortTakenException extends RuntimeException {
    private static final long serialVersionUID = 1;

    PortTakenException(int port) {
        super("something else listens on port " + port + " already, perhaps another page of this program; --port names"
                + " another, --port 0 takes any that is free");
    }
}
