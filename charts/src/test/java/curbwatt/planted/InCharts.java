package curbwatt.planted;

import com.sun.net.httpserver.HttpServer;
import java.awt.Color;
import java.io.FileWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.batik.svggen.SVGGraphics2D;
import org.jfree.chart.JFreeChart;
import picocli.CommandLine;

/** What charts may do in some packages only. */
public final class InCharts {

    private InCharts() {}

    /** Draws. */
    public record DrawsWithChart(JFreeChart chart) {}

    /** Draws. */
    public record DrawsWithColour(Color colour) {}

    /** Draws. */
    public record DrawsWithSvg(SVGGraphics2D graphics) {}

    /** Reads a command line. */
    public record Commands(CommandLine line) {}

    /** Answers browsers. */
    public record Serves(HttpServer server) {}

    /** Ends the program. */
    public static final class Exits {
        void exit() {
            System.exit(1);
        }
    }

    /** Ends the program. */
    public static final class Halts {
        void exit() {
            Runtime.getRuntime().halt(1);
        }
    }

    /** Writes a file. */
    public static final class Writes {
        void write(Path file) throws IOException {
            Files.writeString(file, "text");
        }
    }

    /** Writes a file. */
    public static final class WritesByStream {
        void write() throws IOException {
            new FileWriter("file", java.nio.charset.StandardCharsets.UTF_8).close();
        }
    }

    /** Reads a file, as anyone may. */
    public static final class Reads {
        String read(Path file) throws IOException {
            return Files.readString(file);
        }
    }
}
