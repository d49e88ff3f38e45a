package curbwatt.engine.bench;

import curbwatt.engine.simulation.StepControl;
import curbwatt.engine.simulation.record.TraceRecorder;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryType;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Runs the year of duty with a trace; meant for a Java machine with a small heap. */
public final class TracedYear {

    /** Spacing of the trace's lines (s). */
    static final double SPACING_S = 900;

    private TracedYear() {}

    /**
     * Runs it.
     *
     * @param arguments the file to write the number of lines and the most that the heap held (MB) into
     */
    public static void main(String[] arguments) throws IOException {
        TraceRecorder trace = new TraceRecorder(SPACING_S, List.of("warning", "truck"), List.of("cutoff"));
        int days = DutyYear.study().run(trace, StepControl.forDays()).days().size();
        int lines = trace.trace().rows().size();
        long peak = ManagementFactory.getMemoryPoolMXBeans().stream()
                .filter(pool -> pool.getType() == MemoryType.HEAP)
                .mapToLong(pool -> pool.getPeakUsage().getUsed())
                .sum();
        Files.writeString(
                Path.of(arguments[0]), days + " days, " + lines + " lines, heap at most " + (peak >> 20) + " MB");
    }
}
