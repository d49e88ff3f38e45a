package curbwatt.charts.command;

/** Says what is wrong with what the user asked for, in a sentence for the user. */
final class InputException extends RuntimeException {
    private static final long serialVersionUID = 1;

    InputException(String message) {
        super(message);
    }
}
