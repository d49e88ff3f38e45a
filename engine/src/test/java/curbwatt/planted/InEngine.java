package curbwatt.planted;

import java.net.Socket;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Random;

/** What the engine may not do. */
public final class InEngine {

    private InEngine() {}

    /** Has a field that changes. */
    @SuppressWarnings("UnusedVariable")
    public static final class Changing {
        private int count;
    }

    /** Reads the machine's clock. */
    public static final class ReadsTheClock {
        long now() {
            return System.nanoTime();
        }
    }

    /** Reads the wall clock. */
    public static final class ReadsTheDate {
        Instant now() {
            return Instant.now();
        }
    }

    /** Draws numbers that no second run repeats. */
    public static final class DrawsWithoutSeed {
        double draw() {
            return new Random().nextDouble();
        }
    }

    /** Names a file. */
    public static final class OpensFiles {
        Path file() {
            return Path.of("file");
        }
    }

    /** Opens a connection. */
    public static final class OpensSockets {
        Socket socket() {
            return new Socket();
        }
    }

    /** Prints. */
    public static final class Prints {
        void print() {
            System.out.println();
        }
    }
}
