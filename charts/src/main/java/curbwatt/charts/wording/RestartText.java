package curbwatt.charts.wording;

import curbwatt.engine.event.Event;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.result.CrankCheck;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.verdict.Finding;
import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * When the engine would not start, and how near it comes to that.
 *
 * @param result the run
 */
record RestartText(RunResult result) {

    /** "the engine would not start from 1 h 52 min on". */
    String refusal() {
        if (result.restartTimeS().isPresent()) {
            return "the engine would not start " + window(result.restartTimeS().getAsDouble());
        }
        return worst().map(check -> "the engine would not start " + PlainText.after(check.timeS()) + ", in "
                        + PlainText.quoted(check.phase()))
                .orElse("the engine would not start");
    }

    /** The check with the least margin; empty if the scene never asks. */
    Optional<CrankCheck> worst() {
        return result.crankChecks().stream().min(Comparator.comparingDouble(CrankCheck::marginV));
    }

    /** The check that decided a finding on a start; the worst of all if none is at its instant. */
    Optional<CrankCheck> behind(Finding finding) {
        return result.crankChecks().stream()
                .filter(check ->
                        check.phase().equals(finding.cause()) && finding.atS().equals(OptionalDouble.of(check.timeS())))
                .findFirst()
                .or(this::worst);
    }

    private String window(double lostS) {
        String from = lostS < 1 ? "from the start" : "from " + PlainText.time(lostS);
        return result.events().stream()
                .filter(event -> event.kind() == EventKind.RESTART_MARGIN_REGAINED)
                .mapToDouble(Event::timeS)
                .filter(timeS -> timeS > lostS)
                .mapToObj(timeS -> from + " to " + PlainText.time(timeS))
                .findFirst()
                .orElse(from + " on");
    }
}
