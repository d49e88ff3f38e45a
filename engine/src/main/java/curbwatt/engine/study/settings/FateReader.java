package curbwatt.engine.study.settings;

import curbwatt.engine.study.Answer;
import curbwatt.engine.verdict.Doubt;
import curbwatt.engine.verdict.Finding;
import curbwatt.engine.verdict.Requirement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Reads from an answer what became of a setting.
 *
 * @param cutoff name of the cutoff that was set
 * @param cutoffs names of all of the vehicle's
 */
record FateReader(String cutoff, Set<String> cutoffs) {

    /** A setting that no run was made of, because it can't be set. */
    static Fate impossible(String cutoff) {
        return new Fate(
                List.of(new Failure(FailureKind.CANNOT_BE_SET, cutoff, 0, "", OptionalDouble.empty())),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                0);
    }

    /** What became of it. */
    Fate fate(Answer answer) {
        List<Failure> failures = new ArrayList<>();
        answer.verdict().findings().stream()
                .filter(finding -> !finding.met())
                .map(this::failure)
                .forEach(failures::add);
        answer.verdict().doubts().stream()
                .filter(doubt -> doubt.kind() == Doubt.Kind.CUTOFF_CHATTERS
                        && doubt.subject().equals(cutoff))
                .map(doubt ->
                        new Failure(FailureKind.CHATTER, cutoff, answer.tripCount(), "trips", answer.firstTripS()))
                .forEach(failures::add);
        failures.sort(Comparator.comparing(Failure::kind));
        return new Fate(
                failures,
                answer.heldS(),
                OptionalDouble.of(answer.restartMarginV()),
                answer.firstTripS(),
                answer.tripCount());
    }

    private Failure failure(Finding finding) {
        return new Failure(
                kind(finding),
                finding.cause(),
                Math.abs(finding.limit() - finding.figure()),
                finding.unit(),
                finding.atS());
    }

    private FailureKind kind(Finding finding) {
        Requirement requirement = finding.requirement();
        if (requirement instanceof Requirement.HoldCircuits) {
            return cutoffs.contains(finding.cause()) ? FailureKind.CUT_OFF_TOO_EARLY : FailureKind.LOADS_LOST;
        }
        if (requirement instanceof Requirement.NoTrip) {
            return FailureKind.NUISANCE_TRIP;
        }
        if (requirement instanceof Requirement.WillStart || requirement instanceof Requirement.StartAfterParked) {
            return FailureKind.WOULD_NOT_START;
        }
        return requirement instanceof Requirement.KeepVoltage
                ? FailureKind.VOLTAGE_TOO_LOW
                : FailureKind.CHARGE_TOO_LOW;
    }
}
