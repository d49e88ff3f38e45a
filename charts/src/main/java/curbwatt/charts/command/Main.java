package curbwatt.charts.command;

import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** The program. Reads the command line, hands on to a command, and turns what went wrong into an exit code. */
@Command(
        name = "curbwatt",
        scope = ScopeType.INHERIT,
        mixinStandardHelpOptions = true,
        versionProvider = ProgramVersion.class,
        usageHelpWidth = 96,
        sortOptions = false,
        synopsisHeading = "%n",
        descriptionHeading = "%n",
        parameterListHeading = "%nArguments:%n",
        optionListHeading = "%nOptions:%n",
        commandListHeading = "%nCommands:%n",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:the work is done, whatever the verdict says",
            "1:the program is at fault",
            "2:the input, an option or the target folder is at fault; nothing was written"
        },
        footerHeading = "%n")
public final class Main implements Runnable {

    @Spec
    private CommandSpec spec;

    @Option(
            names = "--debug",
            scope = ScopeType.INHERIT,
            description = "If the program is at fault, print where it went wrong (a stack trace).")
    private boolean debug;

    /** Runs the program and ends it with an exit code. */
    public static void main(String[] args) {
        System.exit(run(Screen.writer(System.out), Screen.writer(System.err), args));
    }

    /**
     * Runs the program.
     *
     * @param out where answers go
     * @param err where complaints and progress go
     * @param args the command line
     * @return the exit code
     */
    public static int run(PrintWriter out, PrintWriter err, String... args) {
        Main main = new Main();
        CommandLine line = new CommandLine(main);
        Commands.addTo(line, args);
        line.getCommandSpec()
                .usageMessage()
                .description(
                        "Answers three questions about a work truck's 12 V system before the truck goes out: will it hold its"
                                + " scene, when does the low-voltage cutoff act, will the engine start again.",
                        "",
                        "Start with:  curbwatt run demo:NAME  (curbwatt demo lists the names)");
        Complaints complaints = new Complaints(err, () -> main.debug);
        line.setOut(out)
                .setErr(err)
                .setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF))
                .setParameterExceptionHandler(complaints::onBadCommandLine)
                .setExecutionExceptionHandler((fault, where, parsed) -> complaints.on(fault));
        try {
            return line.execute(args);
        } catch (StackOverflowError | OutOfMemoryError fault) {
            return complaints.on(fault);
        } catch (LinkageError fault) {
            // What is made once for all, the typeface say, could not be; why is in its cause.
            return complaints.on(fault.getCause() == null ? fault : fault.getCause());
        } finally {
            out.flush();
            err.flush();
        }
    }

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }
}
