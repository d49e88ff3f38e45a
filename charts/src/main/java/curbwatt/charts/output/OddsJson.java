package curbwatt.charts.output;

import curbwatt.engine.study.odds.Chance;
import curbwatt.engine.study.odds.Fan;
import curbwatt.engine.study.odds.Importance;
import curbwatt.engine.study.odds.Input;
import curbwatt.engine.study.odds.OddsResult;
import curbwatt.engine.study.odds.Spread;
import curbwatt.scenarios.assemble.ReadyScenario;
import java.util.List;
import java.util.Locale;

/** Chances, for other tools; {@code docs/result.md} explains them. */
public final class OddsJson {

    private OddsJson() {}

    /** The whole document. */
    public static String of(ReadyScenario scenario, OddsResult result) {
        return JsonText.of(new JsonObject()
                .with("version", ResultJson.VERSION)
                .with("study", "odds")
                .with("format", 1)
                .with("source", scenario.source())
                .with("title", scenario.title())
                .with("draws", result.draws().size())
                .with("runs", result.runs())
                .with("seed", result.plan().seed())
                .with("sampling", word(result.plan().sampling()))
                .with(
                        "inputs",
                        result.inputs().stream()
                                .map(input -> input(input, result))
                                .toList())
                .with(
                        "chances",
                        new JsonObject()
                                .with(
                                        "held",
                                        result.held().map(OddsJson::chance).orElse(null))
                                .with("starts", chance(result.starts()))
                                .with("startsWithMarginAsked", chance(result.enoughMargin()))
                                .with("tripsOnLowVoltage", chance(result.trips()))
                                .with("nuisanceTrip", chance(result.nuisance()))
                                .with("everythingAskedMet", chance(result.met())))
                .with("mattersFor", result.holdDecides() ? "timeHeld" : "restartMargin")
                .with("timeHeldDependsOn", ranking(result.holdImportance()))
                .with("restartMarginDependsOn", ranking(result.startImportance()))
                .with("firstTripTimesS", result.tripTimesS())
                .with(
                        "fan",
                        new JsonObject()
                                .with("stretchS", result.fan().stretchS())
                                .with("percents", Fan.PERCENTS)
                                .with(
                                        "stretches",
                                        result.fan().stretches().stream()
                                                .map(OddsJson::stretch)
                                                .toList())));
    }

    private static JsonObject input(Input input, OddsResult result) {
        Spread spread = result.plan().spread(input);
        return new JsonObject()
                .with("input", word(input))
                .with("unit", spread.unit())
                .with("distribution", word(spread.shape()))
                .with("likeliest", spread.shape() == Spread.Shape.UNIFORM ? null : (Object) spread.likeliest())
                .with("standardDeviation", spread.shape() == Spread.Shape.NORMAL ? (Object) spread.sd() : null)
                .with("from", spread.from())
                .with("to", spread.to());
    }

    private static JsonObject chance(Chance chance) {
        return new JsonObject()
                .with("hits", chance.hits())
                .with("fraction", chance.fraction())
                .with("lowFraction", chance.lowFraction())
                .with("highFraction", chance.highFraction())
                .with("confidenceFraction", Chance.CONFIDENCE)
                .with("method", word(chance.method()));
    }

    private static List<JsonObject> ranking(List<Importance> ranking) {
        return ranking.stream()
                .map(importance -> new JsonObject()
                        .with("input", word(importance.input()))
                        .with("rankCorrelation", importance.rank().rhoRatio())
                        .with("lowRankCorrelation", importance.rank().lowRatio())
                        .with("highRankCorrelation", importance.rank().highRatio())
                        .with(
                                "variance",
                                importance
                                        .share()
                                        .map(share -> new JsonObject()
                                                .with("firstOrderFraction", share.firstFraction())
                                                .with("lowFraction", share.lowFraction())
                                                .with("highFraction", share.highFraction())
                                                .with("totalFraction", share.totalFraction()))
                                        .orElse(null)))
                .toList();
    }

    private static JsonObject stretch(Fan.Stretch stretch) {
        return new JsonObject()
                .with("endS", stretch.endS())
                .with("lasting", stretch.running())
                .with("lowestV", stretch.lowestV())
                .with("chargeFraction", stretch.chargeFraction());
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
