package curbwatt.charts.command;

import java.io.PrintWriter;
import java.io.StringWriter;

/** What the program said to a command line. */
record Said(int exitCode, String out, String err) {

    static Said by(String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int exitCode = Main.run(new PrintWriter(out), new PrintWriter(err), args);
        return new Said(exitCode, out.toString(), err.toString());
    }
}
