package curbwatt.charts.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

/** Stub. */
@Command(name = "demo")
final class DemoCommand implements Callable<Integer> {
    @Override
    public Integer call() {
        return 0;
    }
}
