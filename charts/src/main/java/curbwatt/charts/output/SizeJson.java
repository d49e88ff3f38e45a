package curbwatt.charts.output;

import curbwatt.charts.run.SizeStory;
import curbwatt.engine.sizing.DutyPeriod;
import curbwatt.engine.study.size.CandidateOutcome;
import curbwatt.engine.study.size.Conditions;
import curbwatt.engine.study.size.HoldCurve;
import curbwatt.engine.study.size.Need;
import curbwatt.engine.study.size.PaperSize;
import curbwatt.engine.study.size.SizeResult;
import curbwatt.engine.verdict.Finding;
import java.util.List;
import java.util.Locale;

/** What came of a sizing, for other tools; {@code docs/result.md} explains it. */
public final class SizeJson {

    private SizeJson() {}

    /** The whole document. */
    public static String of(SizeStory story) {
        SizeResult result = story.result();
        return JsonText.of(new JsonObject()
                .with("study", "size")
                .with("format", 1)
                .with("source", story.scenario().source())
                .with("title", story.scenario().title())
                .with("battery", result.seat().isAuxiliary() ? "auxiliary" : "starter")
                .with("presentAh", result.nowAh())
                .with("stated", conditions(result.stated()))
                .with("draws", result.plan().draws())
                .with("mustHold", result.plan().mustHold())
                .with("asNewWarm", need(result.steps().asNewWarm()))
                .with("asNew", need(result.steps().asNew()))
                .with("atStated", need(result.steps().stated()))
                .with("atOdds", need(result.steps().atOdds()))
                .with("drawNeedsAh", result.steps().drawNeedsAh())
                .with(
                        "chosen",
                        result.chosen().map(chosen -> chosen.candidate().name()).orElse(null))
                .with(
                        "labels",
                        result.outcomes().stream().map(SizeJson::outcome).toList())
                .with("paper", result.paper().map(SizeJson::paper).orElse(null)));
    }

    private static JsonObject conditions(Conditions stated) {
        return new JsonObject()
                .with("capacityHealthFraction", stated.capacityHealthFraction())
                .with("resistanceGrowthFactor", stated.resistanceGrowthFactor())
                .with("batteryC", stated.batteryC());
    }

    private static JsonObject need(Need need) {
        return new JsonObject()
                .with("holdsAh", need.holdsAh())
                .with("failsAh", need.failsAh())
                .with("failure", need.failure().map(SizeJson::failure).orElse(null));
    }

    private static JsonObject failure(Finding finding) {
        return new JsonObject()
                .with("requirement", finding.requirement().getClass().getSimpleName())
                .with("figure", finding.figure())
                .with("limit", finding.limit())
                .with("unit", finding.unit())
                .with("cause", finding.cause());
    }

    private static JsonObject outcome(CandidateOutcome outcome) {
        return new JsonObject()
                .with("name", outcome.candidate().name())
                .with("c20Ah", outcome.candidate().c20Ah())
                .with("failure", outcome.failure().map(SizeJson::failure).orElse(null))
                .with(
                        "held",
                        outcome.held().isPresent() ? (Object) outcome.held().getAsInt() : null);
    }

    private static JsonObject paper(PaperSize paper) {
        return new JsonObject()
                .with("chargeAh", paper.chargeAh())
                .with("cycleA", paper.cycle().stream().map(DutyPeriod::currentA).toList())
                .with(
                        "cycleS",
                        paper.cycle().stream().map(DutyPeriod::durationS).toList())
                .with("sectionsAh", paper.sections().sectionsAh())
                .with("endV", paper.endV())
                .with("uncorrectedAh", paper.uncorrectedAh())
                .with("temperatureC", paper.temperatureC())
                .with("temperatureFactor", paper.factors().temperatureFactor())
                .with("marginFactor", paper.factors().marginFactor())
                .with("ageingFactor", paper.factors().ageingFactor())
                .with("capacityAh", paper.capacityAh())
                .with("tripV", paper.tripV())
                .with("capacityAtTripAh", paper.capacityAtTripAh());
    }

    /** Hold times of all curves as comma-separated values. */
    public static String curves(List<HoldCurve> curves) {
        StringBuilder text = new StringBuilder("batteryC,capacityHealthFraction,c20Ah,heldS,toTheEnd\r\n");
        for (HoldCurve curve : curves) {
            for (HoldCurve.Point point : curve.points()) {
                text.append(String.format(
                        Locale.ROOT,
                        "%s,%s,%s,%s,%s\r\n",
                        DigitText.of(curve.conditions().batteryC()),
                        DigitText.of(curve.conditions().capacityHealthFraction()),
                        DigitText.of(point.c20Ah()),
                        DigitText.of(point.heldS()),
                        point.toTheEnd()));
            }
        }
        return text.toString();
    }
}
