package curbwatt.charts.command;

import java.io.Console;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** What is at the other end of the program's output. */
final class Screen {

    private Screen() {}

    /** Whether a person watches, rather than a file or another program. */
    @SuppressWarnings("SystemConsoleNull") // later Java versions always have a console, and are asked below
    static boolean isTerminal() {
        Console console = System.console();
        if (console == null) {
            return false;
        }
        try {
            return (boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (NoSuchMethodException e) {
            return true; // before Java 22 a console is a terminal
        } catch (ReflectiveOperationException e) {
            return false;
        }
    }

    /**
     * Whether what is complained of appears on that terminal. Java asks after input and output alone; where the system
     * says
     * what the third stream is, that counts too.
     */
    static boolean showsComplaints() {
        if (!isTerminal()) {
            return false;
        }
        Path stream = Path.of("/proc/self/fd/2");
        try {
            return !Files.isSymbolicLink(stream)
                    || Files.readSymbolicLink(stream).toString().matches("/dev/(pts/|tty|console).*");
        } catch (IOException e) {
            return true; // the system won't say
        }
    }

    /** Writes to a stream in UTF-8, or as a terminal that says otherwise wants it. */
    static PrintWriter writer(PrintStream stream) {
        Charset charset = isTerminal() ? System.console().charset() : StandardCharsets.UTF_8;
        // a terminal without a locale claims ASCII; UTF-8 says the same letters and more
        boolean ascii = charset.equals(StandardCharsets.US_ASCII);
        return new PrintWriter(new OutputStreamWriter(stream, ascii ? StandardCharsets.UTF_8 : charset), true);
    }
}
