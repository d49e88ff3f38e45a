package curbwatt.charts.command;

import curbwatt.charts.page.FirstScenario;
import curbwatt.charts.page.PageServer;
import curbwatt.charts.page.PortTakenException;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Serves the local page until it is stopped. */
@Command(
        name = "page",
        header = "Start the local page: turn a knob, see the drain.",
        description = {
            "Serves a page for a browser on this machine and prints its address. The page shows a scene as a timeline with the"
                    + " verdict above it; every knob runs the engine anew. It plays the scene as time passes, compares runs, maps"
                    + " settings of a cutoff, edits the load budget, and opens and saves scenario files.",
            "",
            "It listens on this machine's own addresses alone (127.0.0.1 and ::1), fetches nothing from elsewhere, and opens no"
                    + " file but the one named here. The scenario lives in the browser's tab; saving it is a download. Ctrl-C ends"
                    + " it."
        },
        footer = {
            "Examples:",
            "  curbwatt page",
            "  curbwatt page demo:winter-breakdown",
            "  curbwatt page trucks/truck-4.json --port 0"
        })
final class PageCommand implements Callable<Integer> {

    private static final int MOST_PORT = 65535;

    @Spec
    private CommandSpec spec;

    @Parameters(
            arity = "0..1",
            paramLabel = "SCENARIO",
            defaultValue = "demo:lane-watch",
            description = "The scenario that a fresh page shows: a file, or demo:NAME. Default: ${DEFAULT-VALUE}.")
    private String scenario;

    @Option(
            names = "--port",
            paramLabel = "N",
            defaultValue = "8412",
            description = "Where the page listens; 0 takes any free port. Default: ${DEFAULT-VALUE}.")
    private int port;

    @Override
    public Integer call() {
        if (port < 0 || port > MOST_PORT) {
            throw new InputException("--port is " + port + "; allowed is 0 to 65535");
        }
        PrintWriter out = spec.commandLine().getOut();
        PrintWriter err = spec.commandLine().getErr();
        ScenarioName name = new ScenarioName(scenario);
        name.open(List.of()).ready().warnings().forEach(warning -> ProblemPrinter.print(warning, err));
        FirstScenario first = name.first();
        try (PageServer server = PageServer.start(port, first, fault -> {
            err.println("error: the program failed on a request of the page (" + fault + ").");
            err.flush();
        })) {
            out.println("The page is at " + server.address());
            out.println("It answers this machine alone. Ctrl-C ends it.");
            out.flush();
            server.warmUp(first);
            new CountDownLatch(1).await();
        } catch (PortTakenException e) {
            throw new InputException(e.getMessage());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return ExitCode.DONE.number();
    }
}
