package curbwatt.charts.command;

import curbwatt.scenarios.file.Part;
import curbwatt.scenarios.file.PartKind;
import curbwatt.scenarios.problem.Nearest;
import curbwatt.scenarios.stock.Catalogue;
import java.io.PrintWriter;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Lists the catalogue of generic parts. */
@Command(
        name = "parts",
        header = "List the generic parts that a scenario can name.",
        description = {
            "Without an argument, lists every part of the catalogue by kind. With a kind, lists those. With a part's name,"
                    + " prints its figures and where they come from. A scenario names a part by \"part\" and may override any"
                    + " of its figures."
        },
        footer = {"Examples:", "  curbwatt parts", "  curbwatt parts battery", "  curbwatt parts battery-agm-92"})
final class PartsCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Parameters(
            arity = "0..1",
            paramLabel = "KIND|NAME",
            description = "battery, alternator, load or starter, or the name of a part.")
    private String wanted;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        Catalogue catalogue = Catalogue.shipped();
        Optional<PartKind> kind = kind();
        Optional<Part> part = wanted == null ? Optional.empty() : catalogue.find(wanted);
        if (part.isPresent()) {
            print(part.get(), out);
        } else if (kind.isPresent()) {
            list(catalogue.parts(kind.get()), out);
        } else if (wanted == null) {
            for (PartKind each : PartKind.values()) {
                out.println(each + ":");
                list(catalogue.parts(each), out);
                out.println();
            }
            out.println("'curbwatt parts NAME' prints a part's figures and their source.");
        } else {
            throw new InputException("there is no part and no kind '" + wanted + "'" + nearest(catalogue));
        }
        return ExitCode.DONE.number();
    }

    private Optional<PartKind> kind() {
        return Arrays.stream(PartKind.values())
                .filter(each -> each.toString().equals(wanted))
                .findFirst();
    }

    private String nearest(Catalogue catalogue) {
        List<String> known = Stream.concat(
                        Arrays.stream(PartKind.values()).map(PartKind::toString),
                        catalogue.parts().stream().map(Part::name))
                .toList();
        List<String> near = Nearest.to(wanted, known);
        return near.isEmpty() ? "; 'curbwatt parts' lists all" : "; nearest: " + String.join(", ", near);
    }

    private static void list(List<Part> parts, PrintWriter out) {
        Columns.print(
                2,
                parts.stream().map(part -> List.of(part.name(), part.title())).toList(),
                out);
    }

    private static void print(Part part, PrintWriter out) {
        out.println(part.name() + ": " + part.title());
        Columns.print(
                2,
                part.figures().entrySet().stream()
                        .map(figure -> List.of(figure.getKey(), figure.getValue()))
                        .toList(),
                out);
        out.println("  Source: " + part.source());
    }
}
