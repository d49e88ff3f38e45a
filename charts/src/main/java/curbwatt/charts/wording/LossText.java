package curbwatt.charts.wording;

import curbwatt.charts.run.RunStory;
import curbwatt.engine.event.Event;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.load.Load;
import curbwatt.engine.verdict.Finding;
import java.util.Optional;

/**
 * How a circuit that should have been held was lost.
 *
 * @param finding the finding; its cause is a cutoff, a load or a circuit
 * @param story the run
 */
record LossText(Finding finding, RunStory story) {

    /** The loss as a sentence. */
    String sentence() {
        return act() + ".";
    }

    /** The loss as a clause: "'Scene power' opens after 48 min with 71 % charge left". */
    String act() {
        double atS = finding.atS().orElse(60 * finding.figure());
        String when = PlainText.after(atS);
        String cause = PlainText.quoted(finding.cause());
        Optional<Event> event = eventAt(atS);
        String left = event.map(e -> " " + new BatteryText(story).left(e)).orElse("");
        if (isCutoff()) {
            boolean byClock = event.filter(e -> e.kind() == EventKind.RUN_TIME_LIMIT_REACHED)
                    .isPresent();
            return cause + (byClock ? " reaches its run-time limit and opens " : " opens ") + when + left;
        }
        if (isLoad()) {
            String level = story.scenario()
                    .vehicle()
                    .loads()
                    .filter(load -> load.name().equals(finding.cause()))
                    .map(Load::dropOut)
                    .filter(dropOut -> dropOut.isPossible())
                    .map(dropOut -> ": its voltage falls below " + PlainText.volts(dropOut.levelV()))
                    .findFirst()
                    .orElse("");
            return cause + " drops out " + when + level;
        }
        if (event.filter(e -> e.kind() == EventKind.FUSE_OPENED).isPresent()) {
            return "the fuse of " + cause + " opens " + when + left;
        }
        if (finding.cause().isEmpty()) {
            return "the scene ends after " + PlainText.time(story.result().durationS());
        }
        boolean node = finding.cause().equals(Places.NODE) || finding.cause().equals(Places.EQUIPMENT_NODE);
        return node
                ? Places.named(finding.cause()) + "'s voltage collapses " + when
                        + ": the loads ask for more power than it can give"
                : cause + " collapses " + when + ": its loads ask for more power than can reach them";
    }

    /** Whether a cutoff opened, rather than a load giving up or a feed collapsing. */
    boolean isCutoff() {
        return story.scenario().vehicle().cutoffs().stream()
                .anyMatch(cutoff -> cutoff.name().equals(finding.cause()));
    }

    private boolean isLoad() {
        return story.scenario().vehicle().loads().anyMatch(load -> load.name().equals(finding.cause()));
    }

    private Optional<Event> eventAt(double atS) {
        return story.result().events().stream()
                .filter(event -> event.subject().equals(finding.cause()))
                .filter(event -> Math.abs(event.timeS() - atS) < 0.5)
                .filter(event -> event.kind() != EventKind.WARNING_BEGAN)
                .findFirst();
    }
}
