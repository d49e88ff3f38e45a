package curbwatt.charts.wording;

import curbwatt.charts.run.RunStory;
import curbwatt.engine.result.CrankCheck;
import curbwatt.engine.verdict.Finding;
import curbwatt.engine.verdict.Requirement;
import java.util.Optional;

/**
 * What a requirement asked, what came of it, and why.
 *
 * @param finding the finding
 * @param story the run it is about
 */
public record FindingText(Finding finding, RunStory story) {

    private static final int MOST_NAMES = 3;

    /** What was asked: "'Radios' stays on for 2 h". */
    public String asked() {
        Requirement requirement = finding.requirement();
        if (requirement instanceof Requirement.HoldCircuits hold) {
            return circuits(hold) + (hold.circuits().size() == 1 ? " stays" : " stay") + " on for "
                    + PlainText.time(hold.durationS());
        }
        if (requirement instanceof Requirement.WillStart start) {
            return "the engine starts" + spare(start.marginV());
        }
        if (requirement instanceof Requirement.StartAfterParked start) {
            return "the engine starts after " + PlainText.time(start.parkedS()) + " parked" + spare(start.marginV());
        }
        if (requirement instanceof Requirement.NoTrip none) {
            return "no cutoff opens in " + PlainText.names(none.phases());
        }
        if (requirement instanceof Requirement.KeepCharge) {
            return new BatteryText(story).starter() + " keeps " + limit() + " of its charge";
        }
        if (requirement instanceof Requirement.KeepAuxiliaryCharge) {
            return BatteryText.AUXILIARY + " keeps " + limit() + " of its charge";
        }
        Requirement.KeepVoltage keep = (Requirement.KeepVoltage) requirement;
        return PlainText.quoted(keep.circuit()) + " gets at least " + limit();
    }

    /** What came out, in a few words: "48 min", "0.91 V to spare", "lowest 68 %". */
    public String found() {
        Requirement requirement = finding.requirement();
        if (requirement instanceof Requirement.HoldCircuits) {
            return finding.cause().isEmpty() && finding.met() ? "throughout" : "for " + figure();
        }
        if (requirement instanceof Requirement.NoTrip) {
            return finding.met() ? "none opens" : figure();
        }
        if (isStart(requirement)) {
            return Double.isInfinite(finding.figure())
                    ? "cannot crank at all"
                    : finding.figure() < 0 ? shortfall() + " too little" : figure() + " to spare";
        }
        return "lowest " + figure();
    }

    /** Why it came out so, in a sentence. */
    public String reason() {
        Requirement requirement = finding.requirement();
        if (requirement instanceof Requirement.HoldCircuits hold) {
            return finding.met()
                    ? PlainText.names(hold.circuits()) + (hold.circuits().size() == 1 ? " stays" : " stay")
                            + " on for all of the " + PlainText.time(hold.durationS()) + " asked."
                    : new LossText(finding, story).sentence() + " " + PlainText.names(hold.circuits())
                            + (hold.circuits().size() == 1 ? " was" : " were") + " to stay on for " + limit() + ".";
        }
        if (isStart(requirement)) {
            return crankReason();
        }
        if (requirement instanceof Requirement.NoTrip none) {
            return finding.met()
                    ? "No cutoff opens in " + PlainText.names(none.phases()) + "."
                    : PlainText.quoted(finding.cause()) + " opens "
                            + PlainText.after(finding.atS().orElse(0)) + "; it was not to open in "
                            + PlainText.names(none.phases()) + ".";
        }
        String verb = finding.met() ? " stays above " : " falls to ";
        if (requirement instanceof Requirement.KeepVoltage keep) {
            return "The voltage at " + PlainText.quoted(keep.circuit()) + verb + figure() + "; " + limit()
                    + " were asked.";
        }
        String below = new ChargeCrossing(story)
                .decidedS(finding).stream()
                        .mapToObj(atS ->
                                " It is below that from " + (atS < 1 ? "the start" : PlainText.time(atS)) + " on.")
                        .findFirst()
                        .orElse("");
        return "The" + battery().substring(3) + "'s charge" + verb + figure() + "; " + limit() + " were asked." + below;
    }

    /** The battery that a requirement on charge is about. */
    String battery() {
        return finding.requirement() instanceof Requirement.KeepAuxiliaryCharge
                ? BatteryText.AUXILIARY
                : new BatteryText(story).starter();
    }

    /** The figure with as many digits as tell it from the limit. */
    public String figure() {
        return spelled(finding.figure());
    }

    /** The limit with as many digits as tell it from the figure. */
    public String limit() {
        return spelled(finding.limit());
    }

    /** Whether it asks for a start of the engine, and its figure is the margin. */
    static boolean isStart(Requirement requirement) {
        return requirement instanceof Requirement.WillStart || requirement instanceof Requirement.StartAfterParked;
    }

    private static String spare(double marginV) {
        return marginV == 0 ? "" : " with " + PlainText.volts(marginV) + " to spare";
    }

    /** Names as long as there are few; the sentence that gives the reason has them all. */
    private String circuits(Requirement.HoldCircuits hold) {
        int asked = hold.circuits().size();
        int all = story.scenario().vehicle().circuits().size();
        if (asked <= MOST_NAMES) {
            return PlainText.names(hold.circuits());
        }
        return asked == all ? "all " + all + " circuits" : asked + " of the " + all + " circuits";
    }

    private String shortfall() {
        return PlainText.volts(-finding.figure());
    }

    private String spelled(double value) {
        return switch (finding.unit()) {
            case "min" -> PlainText.time(60 * value);
            case "trips" -> PlainText.count(Math.round(value), "trip");
            case "1" -> apart(100, 100 * value, 0) + " %";
            default -> apart(1, value, 2) + " " + finding.unit();
        };
    }

    private String apart(double scale, double value, int decimals) {
        double figure = scale * finding.figure();
        double limit = scale * finding.limit();
        boolean same = PlainText.number(figure, decimals).equals(PlainText.number(limit, decimals));
        // a figure just below its limit must not look as if it met it
        return same && figure != limit && decimals < 5
                ? apart(scale, value, decimals + 1)
                : PlainText.number(value, decimals);
    }

    private String crankReason() {
        Optional<CrankCheck> worst = new RestartText(story.result()).behind(finding);
        if (worst.isEmpty()) {
            return "The scene never asks the engine to start.";
        }
        CrankCheck check = worst.get();
        String when = check.timeS() < 1 ? "At the start" : "After " + PlainText.time(check.timeS());
        String where = when + ", in " + PlainText.quoted(check.phase()) + ", " + new BatteryText(story).starter() + " ";
        String needed = "; " + PlainText.volts(check.minimumV()) + " are needed at "
                + PlainText.number(check.batteryC(), 0) + " °C.";
        String there = Double.isInfinite(check.lowestV())
                ? "cannot deliver the cranking current at all"
                : "would hold " + PlainText.volts(check.lowestV()) + " while cranking";
        return where + there + needed + loadsOff(check);
    }

    private static String loadsOff(CrankCheck check) {
        if (check.marginV() >= 0 || check.lowestLoadsOffV() < check.minimumV()) {
            return "";
        }
        return " With all equipment switched off first it would hold " + PlainText.volts(check.lowestLoadsOffV())
                + " and start.";
    }
}
