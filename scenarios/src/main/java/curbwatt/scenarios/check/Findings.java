package curbwatt.scenarios.check;

import curbwatt.scenarios.file.Place;
import curbwatt.scenarios.problem.Positions;
import curbwatt.scenarios.problem.Problem;
import curbwatt.scenarios.problem.SourcePosition;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** Collects the problems of one file; tells each mistake once. */
public final class Findings {
    private final Positions positions;
    private final List<Problem> problems;
    private final List<Place> spoilt;

    /**
     * Begins with what the reader found.
     *
     * @param positions where everything stands
     * @param problems what was refused so far
     * @param spoilt places that later rules must not complain of
     */
    public Findings(Positions positions, Collection<Problem> problems, Collection<Place> spoilt) {
        this.positions = positions;
        this.problems = new ArrayList<>(problems);
        this.spoilt = new ArrayList<>(spoilt);
    }

    /** Notes a mistake, unless something was refused at its place before. */
    public void error(Place place, String message, String remedy) {
        note(Problem.Severity.ERROR, place, message, remedy);
    }

    /** Notes something that a reader should look at, unless something was refused at its place before. */
    public void warning(Place place, String message, String remedy) {
        note(Problem.Severity.WARNING, place, message, remedy);
    }

    /** Makes later rules silent about a place. */
    public void spoil(Place place) {
        spoilt.add(place);
    }

    /** Whether something was refused at a place or round it. */
    public boolean isSpoilt(Place place) {
        return spoilt.stream().anyMatch(place::isInside);
    }

    /** Whether something was refused at a place, round it or inside it. */
    public boolean isTouched(Place place) {
        return isSpoilt(place) || spoilt.stream().anyMatch(inside -> inside.isInside(place));
    }

    /** Returns the line in which the value at a place begins. */
    public int line(Place place) {
        return positions.ofValue(place.pointer()).line();
    }

    /** Whether the file itself has a value at a place. */
    public boolean isWritten(Place place) {
        return positions.has(place.pointer());
    }

    /** Whether there is a mistake. */
    public boolean hasErrors() {
        return problems.stream().anyMatch(problem -> problem.severity() == Problem.Severity.ERROR);
    }

    /** Returns the problems in order of their place. */
    public List<Problem> inOrder() {
        return problems.stream()
                .distinct()
                .sorted(Comparator.comparing(
                        Problem::position,
                        Comparator.comparingInt(SourcePosition::line).thenComparingInt(SourcePosition::column)))
                .toList();
    }

    private void note(Problem.Severity severity, Place place, String message, String remedy) {
        if (!isSpoilt(place)) {
            problems.add(new Problem(severity, positions.ofValue(place.pointer()), message, remedy));
        }
    }
}
