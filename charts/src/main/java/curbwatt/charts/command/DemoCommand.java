package curbwatt.charts.command;

import curbwatt.charts.output.NewFiles;
import curbwatt.scenarios.assemble.ReadyScenario;
import curbwatt.scenarios.assemble.Scenarios;
import curbwatt.scenarios.stock.DemoScenarios;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lists, prints or copies the scenarios that ship with the program. */
@Command(
        name = "demo",
        header = "List the scenarios that ship with the program, or copy them to begin with.",
        description = {
            "Without NAME, lists them. With NAME, prints that file, comments included. With --copy, writes them (or the one"
                    + " named) into a folder, with the schema that lets an editor complete and check them; a file that is there"
                    + " already is never overwritten."
        },
        footer = {
            "Examples:",
            "  curbwatt demo",
            "  curbwatt run demo:lane-watch",
            "  curbwatt demo --copy my-trucks",
            "  curbwatt demo lane-watch > truck.json"
        })
final class DemoCommand implements Callable<Integer> {

    private static final String SCHEMA = "scenario.schema.json";

    @Spec
    private CommandSpec spec;

    @Parameters(arity = "0..1", paramLabel = "NAME", description = "Name of one of them.")
    private String name;

    @Option(names = "--copy", paramLabel = "DIR", description = "Write the files into this folder.")
    private Path copy;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        List<String> names = name == null ? DemoScenarios.names() : List.of(name);
        if (copy != null) {
            SortedMap<String, byte[]> files = new TreeMap<>();
            names.forEach(
                    each -> files.put(each + ".json", DemoScenarios.text(each).getBytes(StandardCharsets.UTF_8)));
            files.put(SCHEMA, schema());
            NewFiles.write(copy, files);
            files.keySet().forEach(file -> out.println(copy.resolve(file)));
        } else if (name != null) {
            out.print(DemoScenarios.text(name));
        } else {
            list(names, out);
        }
        return ExitCode.DONE.number();
    }

    private static void list(List<String> names, PrintWriter out) {
        Scenarios scenarios = new Scenarios();
        for (String each : names) {
            ReadyScenario ready = scenarios.demo(each);
            out.println(DemoScenarios.PREFIX + each);
            out.println("    " + ready.title());
            out.println("    " + ready.description());
        }
    }

    private static byte[] schema() {
        try (InputStream stream = DemoCommand.class.getResourceAsStream("/curbwatt/schema/" + SCHEMA)) {
            if (stream == null) {
                throw new IllegalStateException("the program is damaged: " + SCHEMA + " is missing");
            }
            return stream.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(SCHEMA, e);
        }
    }
}
