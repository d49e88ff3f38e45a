package curbwatt.engine.study;

import curbwatt.engine.event.Event;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.result.CrankCheck;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.verdict.Finding;
import curbwatt.engine.verdict.Requirement;
import curbwatt.engine.verdict.Verdict;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * What one run answers, in the figures that studies compare.
 *
 * @param result the run
 * @param verdict what it means for what was asked
 */
public record Answer(RunResult result, Verdict verdict) {

    /** Refuses missing parts. */
    public Answer {
        Objects.requireNonNull(result, "result");
        Objects.requireNonNull(verdict, "verdict");
    }

    /** Whether everything asked was met. */
    public boolean isMet() {
        return verdict.isMet();
    }

    /** First opening of any cutoff, by voltage or by its run-time limit; empty: none opened (s). */
    public OptionalDouble firstTripS() {
        return trips().mapToDouble(Event::timeS).findFirst();
    }

    /** Number of times a cutoff opened. */
    public long tripCount() {
        return trips().count();
    }

    /** Whether a cutoff opened, by voltage or by its run-time limit. */
    public boolean opened(String cutoff) {
        return trips().anyMatch(trip -> trip.subject().equals(cutoff));
    }

    /** How long the circuits that are to be held were held, the shortest of all; empty: nothing is to be held (s). */
    public OptionalDouble heldS() {
        return findings(Requirement.HoldCircuits.class)
                .mapToDouble(finding -> finding.figure() * 60)
                .min();
    }

    /** Room above the minimum cranking voltage at the worst of the starts looked at (V). */
    public double restartMarginV() {
        return result.crankChecks().stream()
                .mapToDouble(CrankCheck::marginV)
                .min()
                .orElseThrow();
    }

    /** The first requirement that was not met; empty: all were. */
    public Optional<Finding> firstFailure() {
        return verdict.findings().stream().filter(finding -> !finding.met()).findFirst();
    }

    /** The findings on requirements of one kind. */
    public Stream<Finding> findings(Class<? extends Requirement> kind) {
        return verdict.findings().stream().filter(finding -> kind.isInstance(finding.requirement()));
    }

    private Stream<Event> trips() {
        return result.events().stream()
                .filter(event ->
                        event.kind() == EventKind.CUTOFF_TRIPPED || event.kind() == EventKind.RUN_TIME_LIMIT_REACHED);
    }
}
