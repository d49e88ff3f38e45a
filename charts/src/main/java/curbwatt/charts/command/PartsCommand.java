package curbwatt.charts.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

/** Stub. */
@Command(name = "parts")
final class PartsCommand implements Callable<Integer> {
    @Override
    public Integer call() {
        return 0;
    }
}
