package curbwatt.engine.simulation.envelope;

import curbwatt.engine.simulation.book.EngineBook;
import curbwatt.engine.simulation.device.CutoffState;
import java.util.Optional;

/** What was read and counted before and after a whole long step; between, it runs on a straight line. */
final class Frame {

    private final Optional<CutoffState> cutoff;
    private final EngineBook engine;
    private double startS;
    private double lengthS;
    private double readingBeforeV;
    private double readingAfterV;
    private double runBeforeS;
    private double litresBefore;

    Frame(Optional<CutoffState> cutoff, EngineBook engine) {
        this.cutoff = cutoff;
        this.engine = engine;
    }

    /** Notes what holds before a long step is looked for. */
    void before() {
        runBeforeS = engine.runS();
        litresBefore = engine.litres();
        readingBeforeV = filteredV();
    }

    /** Notes what holds after one was found. */
    void after(double fromS, double toS) {
        startS = fromS;
        lengthS = toS - fromS;
        readingAfterV = filteredV();
    }

    private double filteredV() {
        return cutoff.isPresent() ? cutoff.get().filteredV() : Double.NaN;
    }

    double share(double timeS) {
        return (timeS - startS) / lengthS;
    }

    /** Whether there is a cutoff that reads. */
    boolean reads() {
        return cutoff.isPresent();
    }

    /** The cutoff's reading (V). */
    double readingV(double timeS) {
        double fromV = Double.isNaN(readingBeforeV) ? readingAfterV : readingBeforeV;
        return fromV + share(timeS) * (readingAfterV - fromV);
    }

    /** Time for which the engine has run (s). */
    double runS(double timeS) {
        return runBeforeS + share(timeS) * (engine.runS() - runBeforeS);
    }

    /** Fuel taken (L). */
    double litres(double timeS) {
        return litresBefore + share(timeS) * (engine.litres() - litresBefore);
    }
}
