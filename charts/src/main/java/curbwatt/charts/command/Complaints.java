package curbwatt.charts.command;

import curbwatt.charts.output.FolderRefusedException;
import curbwatt.scenarios.problem.Nearest;
import curbwatt.scenarios.problem.ScenarioException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BooleanSupplier;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** What went wrong, told to the user, and the exit code for it. */
final class Complaints {

    private final PrintWriter err;
    private final BooleanSupplier debug;

    Complaints(PrintWriter err, BooleanSupplier debug) {
        this.err = err;
        this.debug = debug;
    }

    /** A command line that can't be read. */
    int onBadCommandLine(ParameterException fault, String[] args) {
        CommandLine command = fault.getCommandLine();
        if (fault instanceof UnmatchedArgumentException unmatched) {
            err.println("error: " + unknown(unmatched.getUnmatched().get(0), command));
        } else {
            err.println("error: " + message(fault));
        }
        err.println("See '" + command.getCommandSpec().qualifiedName() + " --help'.");
        return ExitCode.INPUT_FAULT.number();
    }

    /** Anything that went wrong after that. */
    int on(Throwable fault) {
        if (fault instanceof ScenarioException scenario) {
            ProblemPrinter.print(scenario.problems(), err);
            return ExitCode.INPUT_FAULT.number();
        }
        if (fault instanceof InputException || fault instanceof FolderRefusedException) {
            err.println("error: " + fault.getMessage());
            err.println("Nothing was written.");
            return ExitCode.INPUT_FAULT.number();
        }
        err.println("error: the program failed (" + fault.getClass().getSimpleName()
                + (fault.getMessage() == null ? "" : ": " + fault.getMessage()) + ").");
        err.println("This is our fault, not yours. Please report it with the scenario file and what --debug adds.");
        if (debug.getAsBoolean()) {
            fault.printStackTrace(err);
        }
        return ExitCode.OUR_FAULT.number();
    }

    private static String unknown(String found, CommandLine command) {
        boolean option = found.startsWith("-");
        Set<String> known = option
                ? command.getCommandSpec().optionsMap().keySet()
                : command.getSubcommands().keySet();
        String what = option ? "option" : known.isEmpty() ? "argument" : "command";
        String wanted = found.replaceFirst("=.*", "");
        List<String> near = Nearest.to(wanted, new TreeSet<>(known));
        return "there is no " + what + " '" + wanted + "'" + (known.isEmpty() ? " here" : "")
                + (near.isEmpty() ? "" : "; nearest: " + String.join(", ", near));
    }

    private static String message(ParameterException fault) {
        String message = fault.getMessage();
        return message.substring(0, 1).toLowerCase(Locale.ROOT) + message.substring(1);
    }
}
