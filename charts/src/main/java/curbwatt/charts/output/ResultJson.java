package curbwatt.charts.output;

import curbwatt.charts.run.RunStory;
import curbwatt.charts.wording.ChargeCrossing;
import curbwatt.charts.wording.DoubtText;
import curbwatt.charts.wording.FindingText;
import curbwatt.charts.wording.Headline;
import curbwatt.engine.event.Event;
import curbwatt.engine.result.ChargeLedger;
import curbwatt.engine.result.EnergyLedger;
import curbwatt.engine.verdict.Doubt;
import curbwatt.engine.verdict.Finding;
import curbwatt.engine.verdict.Requirement;
import curbwatt.scenarios.assemble.ReadyScenario;
import java.util.List;
import java.util.Locale;

/**
 * A run for other tools: the document that {@code docs/result.md} explains and {@code docs/result.schema.json} checks.
 */
public final class ResultJson {

    /** Version of the document; grows when a reader of the version before would go wrong. */
    public static final int VERSION = 1;

    private ResultJson() {}

    /** The whole file. */
    public static String of(RunStory story) {
        ReadyScenario scenario = story.scenario();
        return JsonText.of(new JsonObject()
                .with("version", VERSION)
                .with(
                        "scenario",
                        new JsonObject()
                                .with("title", scenario.title())
                                .with("source", scenario.source())
                                .with("vehicle", scenario.vehicle().name()))
                .with("verdict", verdict(story))
                .with(
                        "events",
                        story.result().events().stream().map(ResultJson::event).toList())
                .with("ledger", ledger(story))
                .with("figures", FiguresJson.of(story))
                .with("flashing", story.flashing().map(FlashJson::of).orElse(null))
                .with(
                        "doubts",
                        story.verdict().doubts().stream().map(ResultJson::doubt).toList())
                .with("assumptions", scenario.assumptions()));
    }

    /** A constant's name as a key: {@code CUTOFF_TRIPPED} becomes {@code cutoffTripped}. */
    static String camelCase(Enum<?> constant) {
        StringBuilder text = new StringBuilder();
        for (String word : constant.name().toLowerCase(Locale.ROOT).split("_", -1)) {
            text.append(text.isEmpty() ? word : word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1));
        }
        return text.toString();
    }

    private static JsonObject verdict(RunStory story) {
        return new JsonObject()
                .with("met", story.verdict().isMet())
                .with("sentence", new Headline(story).sentence())
                .with(
                        "requirements",
                        story.verdict().findings().stream()
                                .map(finding -> requirement(finding, story))
                                .toList());
    }

    private static JsonObject requirement(Finding finding, RunStory story) {
        FindingText text = new FindingText(finding, story);
        JsonObject json = new JsonObject();
        Requirement requirement = finding.requirement();
        if (requirement instanceof Requirement.HoldCircuits hold) {
            json.with("kind", "holdCircuits")
                    .with("circuits", hold.circuits().stream().sorted().toList());
        } else if (requirement instanceof Requirement.KeepVoltage keep) {
            json.with("kind", "keepVoltage").with("circuits", List.of(keep.circuit()));
        } else if (requirement instanceof Requirement.KeepAuxiliaryCharge) {
            json.with("kind", "keepAuxiliaryCharge");
        } else if (requirement instanceof Requirement.NoTrip none) {
            json.with("kind", "noTrip")
                    .with("phases", none.phases().stream().sorted().toList());
        } else if (requirement instanceof Requirement.StartAfterParked start) {
            json.with("kind", "startAfterParked").with("parkedS", start.parkedS());
        } else {
            json.with("kind", requirement instanceof Requirement.WillStart ? "willStart" : "keepCharge");
        }
        return json.with("met", finding.met())
                .with("figure", finding.figure())
                .with("limit", finding.limit())
                .with("unit", finding.unit())
                .with("cause", finding.cause().isEmpty() ? null : finding.cause())
                .with("atS", new ChargeCrossing(story).decidedS(finding))
                .with("asked", text.asked())
                .with("sentence", text.reason());
    }

    private static JsonObject event(Event event) {
        return new JsonObject()
                .with("timeS", event.timeS())
                .with("kind", camelCase(event.kind()))
                .with("subject", event.subject())
                .with("voltageV", event.voltageV())
                .with("stateOfCharge", event.stateOfChargeFraction());
    }

    private static JsonObject doubt(Doubt doubt) {
        return new JsonObject()
                .with("kind", camelCase(doubt.kind()))
                .with("subject", doubt.subject())
                .with("sentence", DoubtText.sentence(doubt));
    }

    private static JsonObject ledger(RunStory story) {
        ChargeLedger charge = story.result().charge();
        EnergyLedger energy = story.result().energy();
        return new JsonObject()
                .with(
                        "charge",
                        new JsonObject()
                                .with("removedAh", charge.removedAh())
                                .with("deliveredAh", charge.deliveredAh())
                                .with("gassedAh", charge.gassedAh())
                                .with("selfDischargedAh", charge.selfDischargedAh())
                                .with("alternatorAh", charge.alternatorAh())
                                .with("loadsAh", charge.loadsAh())
                                .with("starterAh", charge.starterAh())
                                .with("linkAh", charge.linkAh())
                                .with("batteryRemainderAh", charge.batteryRemainderAh())
                                .with("nodeRemainderAh", charge.nodeRemainderAh()))
                .with(
                        "energy",
                        new JsonObject()
                                .with("alternatorWh", energy.alternatorWh())
                                .with("releasedWh", energy.releasedWh())
                                .with("loadsWh", energy.loadsWh())
                                .with("starterWh", energy.starterWh())
                                .with("feedLossWh", energy.feedLossWh())
                                .with("linkLossWh", energy.linkLossWh())
                                .with("batteryLossWh", energy.batteryLossWh())
                                .with("gassingWh", energy.gassingWh())
                                .with("remainderWh", energy.remainderWh()));
    }
}
