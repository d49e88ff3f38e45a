package curbwatt.charts.wording;

import curbwatt.charts.run.RunStory;
import curbwatt.engine.result.CrankCheck;
import curbwatt.engine.verdict.Finding;
import curbwatt.engine.verdict.Requirement;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The answer in one plain sentence that a planner can act on.
 *
 * @param story the run
 */
public record Headline(RunStory story) {

    /** The sentence. */
    public String sentence() {
        List<Finding> failed = story.verdict().findings().stream()
                .filter(finding -> !finding.met())
                .sorted(Comparator.comparingInt(Headline::rank))
                .toList();
        if (failed.isEmpty()) {
            return story.verdict().findings().isEmpty()
                    ? "Nothing was asked of this scene" + unaskedRestart()
                    : praise();
        }
        return blame(failed.get(0));
    }

    /** What weighs most: people stranded, then equipment lost, then margins. */
    private static int rank(Finding finding) {
        Requirement requirement = finding.requirement();
        if (FindingText.isStart(requirement)) {
            return finding.figure() < 0 ? 0 : 3;
        }
        if (requirement instanceof Requirement.HoldCircuits || requirement instanceof Requirement.NoTrip) {
            return 1;
        }
        return requirement instanceof Requirement.KeepVoltage ? 2 : 4;
    }

    private String blame(Finding finding) {
        FindingText text = new FindingText(finding, story);
        Requirement requirement = finding.requirement();
        if (requirement instanceof Requirement.StartAfterParked start && finding.figure() < 0) {
            return "Strands the crew: the engine would not start after " + PlainText.time(start.parkedS()) + " parked.";
        }
        if (requirement instanceof Requirement.NoTrip) {
            return "Nuisance trip: " + PlainText.quoted(finding.cause()) + " opens "
                    + PlainText.after(finding.atS().orElse(0)) + ", where it was not to open.";
        }
        if (FindingText.isStart(requirement)) {
            return finding.figure() < 0
                    ? "Strands the crew: " + restart().refusal() + "."
                    : "Starts again, but with " + text.figure() + " to spare instead of " + text.limit() + ".";
        }
        if (requirement instanceof Requirement.HoldCircuits) {
            LossText loss = new LossText(finding, story);
            return (loss.isCutoff() ? "Cut off too early: " : "Lost too early: ") + loss.act() + "; asked were "
                    + text.limit() + ".";
        }
        if (requirement instanceof Requirement.KeepVoltage keep) {
            return "Too little voltage: " + PlainText.quoted(keep.circuit()) + " is down to " + text.figure()
                    + "; asked were " + text.limit() + ".";
        }
        return "Drains " + text.battery() + " too far: below " + text.limit() + " charge" + below(finding)
                + ", down to " + text.figure() + ".";
    }

    private String praise() {
        String held = held();
        OptionalDouble margin = margin();
        if (story.result().restartTimeS().isPresent()) {
            return (held.isEmpty() ? "Keeps what was asked" : held) + unaskedRestart();
        }
        if (held.isEmpty()) {
            return margin.isPresent() ? "Starts again with " + room(margin) + " to spare." : "Keeps what was asked.";
        }
        return held + (margin.isPresent() ? " and starts again with " + room(margin) + " to spare." : ".");
    }

    private String held() {
        List<Requirement.HoldCircuits> holds = story.verdict().findings().stream()
                .map(Finding::requirement)
                .filter(Requirement.HoldCircuits.class::isInstance)
                .map(Requirement.HoldCircuits.class::cast)
                .toList();
        if (holds.isEmpty()) {
            return "";
        }
        double longestS = holds.stream()
                .mapToDouble(Requirement.HoldCircuits::durationS)
                .max()
                .orElseThrow();
        boolean wholeScene = longestS >= story.result().durationS() - 1;
        if (wholeScene) {
            return "Holds all " + PlainText.time(longestS);
        }
        return holds.size() == 1
                ? "Holds " + PlainText.names(holds.get(0).circuits()) + " for the " + PlainText.time(longestS)
                        + " asked"
                : "Holds its circuits as long as was asked, up to " + PlainText.time(longestS) + ",";
    }

    private OptionalDouble margin() {
        return restart().worst().stream().mapToDouble(CrankCheck::marginV).findFirst();
    }

    private static String room(OptionalDouble margin) {
        return PlainText.volts(margin.getAsDouble());
    }

    private String unaskedRestart() {
        return story.result().restartTimeS().isPresent() ? ", but " + restart().refusal() + "." : ".";
    }

    private RestartText restart() {
        return new RestartText(story.result());
    }

    /** When the charge first lay below what was asked, as far as the trace tells. */
    private String below(Finding finding) {
        return new ChargeCrossing(story)
                .decidedS(finding).stream()
                        .mapToObj(timeS -> " " + PlainText.after(timeS))
                        .findFirst()
                        .orElse("");
    }
}
