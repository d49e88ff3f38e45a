package curbwatt.charts.command;

/** What the program's end says. */
public enum ExitCode {
    /** The work is done, whatever the verdict. */
    DONE(0),
    /** The program is at fault. */
    OUR_FAULT(1),
    /** The input, an option or the target folder is at fault; nothing was written. */
    INPUT_FAULT(2);

    private final int number;

    ExitCode(int number) {
        this.number = number;
    }

    /** The number that the shell sees. */
    public int number() {
        return number;
    }
}
