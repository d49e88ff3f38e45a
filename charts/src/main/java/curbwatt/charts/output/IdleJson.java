package curbwatt.charts.output;

import curbwatt.charts.run.IdleStory;
import curbwatt.charts.wording.IdleWords;
import curbwatt.engine.study.idle.Flip;
import curbwatt.engine.study.idle.IdleCase;
import curbwatt.engine.study.idle.IdlePlan;
import curbwatt.engine.study.idle.Measure;
import curbwatt.engine.study.idle.Tried;
import curbwatt.engine.study.idle.WayOutcome;
import curbwatt.engine.study.idle.money.Prices;
import java.util.Locale;

/** The study on standing, for other tools; {@code docs/result.md} explains it. */
public final class IdleJson {

    private IdleJson() {}

    /** The whole document. */
    public static String of(IdleStory story) {
        IdleCase base = story.result().base();
        return JsonText.of(new JsonObject()
                .with("study", "idle")
                .with("format", 1)
                .with("source", story.scenario().source())
                .with("title", story.scenario().title())
                .with("measure", word(base.measure()))
                .with("best", best(base))
                .with("plan", plan(base.plan()))
                .with(
                        "ways",
                        base.outcomes().stream()
                                .map(outcome -> way(base, outcome))
                                .toList())
                .with(
                        "tried",
                        story.result().tried().stream().map(IdleJson::tried).toList())
                .with(
                        "flips",
                        story.result().flips().stream().map(IdleJson::flip).toList()));
    }

    private static JsonObject plan(IdlePlan plan) {
        return new JsonObject()
                .with("scenesPerYear", plan.scenesPerYear())
                .with("engineStages", plan.engineStages().stream().sorted().toList())
                .with("prices", plan.prices().map(IdleJson::prices).orElse(null));
    }

    private static JsonObject prices(Prices prices) {
        return new JsonObject()
                .with("currency", prices.currency())
                .with("fuelPricePerLitre", prices.fuelMoneyPerLitre())
                .with("wearPricePerHour", prices.wearMoneyPerH())
                .with("wearPricePerStart", prices.wearMoneyPerStart())
                .with("idleControlPrice", prices.idleControlMoney())
                .with("automaticStartPrice", prices.automaticStartMoney())
                .with("deviceYears", prices.deviceYears());
    }

    private static JsonObject way(IdleCase at, WayOutcome outcome) {
        return new JsonObject()
                .with("way", IdleWords.key(outcome.way()))
                .with("serves", outcome.serves())
                .with("heldS", outcome.answer().heldS())
                .with("firstTripS", outcome.answer().firstTripS())
                .with("trips", outcome.answer().tripCount())
                .with("endStateOfCharge", outcome.answer().result().endChargeFraction())
                .with("lowestStateOfCharge", outcome.answer().result().lowestChargeFraction())
                .with("restartMarginV", outcome.answer().restartMarginV())
                .with("engineH", outcome.usage().engineH())
                .with("highIdleS", outcome.answer().result().engine().highIdleS())
                .with("starts", outcome.usage().starts())
                .with("fuelLitres", outcome.usage().fuelLitres())
                .with("owedFuelLitres", outcome.owedLitres())
                .with("carbonDioxideKg", outcome.carbonKg())
                .with("moneyPerYear", at.measure() == Measure.MONEY ? (Object) at.cost(outcome) : null);
    }

    private static JsonObject tried(Tried tried) {
        return new JsonObject()
                .with("lever", word(tried.lever()))
                .with("factor", tried.factor())
                .with("best", best(tried.outcome()))
                .with(
                        "ways",
                        tried.outcome().outcomes().stream()
                                .map(outcome -> new JsonObject()
                                        .with("way", IdleWords.key(outcome.way()))
                                        .with("serves", outcome.serves())
                                        .with("cost", tried.outcome().cost(outcome)))
                                .toList());
    }

    private static JsonObject flip(Flip flip) {
        return new JsonObject()
                .with("lever", word(flip.lever()))
                .with("factor", flip.factor())
                .with("best", flip.to().map(IdleWords::key).orElse(null));
    }

    private static String best(IdleCase at) {
        return at.bestWay().map(IdleWords::key).orElse(null);
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
