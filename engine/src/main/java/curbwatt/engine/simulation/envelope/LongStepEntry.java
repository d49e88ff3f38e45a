package curbwatt.engine.simulation.envelope;

import curbwatt.engine.simulation.book.RunBook;
import curbwatt.engine.simulation.part.Batteries;
import curbwatt.engine.simulation.part.EngineState;
import curbwatt.engine.simulation.part.OperatingPoint;

/**
 * What a long step is to the books: sums by Simpson's rule, each combination by its share of the time; extremes of instants
 * that there were.
 */
final class LongStepEntry {

    private final Batteries batteries;
    private final EngineState engine;
    private final OperatingPoint point;
    private LongStep step;

    LongStepEntry(Batteries batteries, EngineState engine, int circuits) {
        this.batteries = batteries;
        this.engine = engine;
        point = new OperatingPoint(circuits);
    }

    /** Adds a step to the books, before the batteries move. */
    void add(LongStep found, RunBook book) {
        step = found;
        double sixthS = step.lengthS() / 6;
        double startS = step.startS();
        double endS = startS + step.lengthS();
        add(book, step.start(), startS, sixthS, batteries);
        add(book, step.middle(), startS + 3 * sixthS, 4 * sixthS, step.states().middle);
        add(book, step.end(), endS, sixthS, step.states().end);
        for (int k = 0; k < step.pattern().size(); k++) {
            if (step.share(k) > 0
                    && book.mayNote(step.start().points[k], step.middle().points[k], step.end().points[k])) {
                boolean told = step.tellsAll();
                double firstS = told ? step.telling().firstS[k] : step.pattern().firstS(k, startS);
                double lastS = told ? step.telling().lastS[k] : step.pattern().lastS(k, endS);
                if (firstS <= lastS) {
                    note(book, k, firstS);
                    note(book, k, 0.5 * (firstS + lastS));
                    note(book, k, lastS);
                }
            }
        }
    }

    private void add(RunBook book, Stage stage, double timeS, double weightS, Batteries at) {
        book.turnTo(at);
        for (int k = 0; k < stage.points.length; k++) {
            if (step.share(k) > 0) {
                book.addShare(step.share(k) * weightS, timeS, stage.points[k], engine);
            }
        }
    }

    private void note(RunBook book, int combination, double timeS) {
        step.at(combination, (timeS - step.startS()) / step.lengthS(), point);
        book.note(timeS, point);
    }
}
