package curbwatt.charts.output;

import curbwatt.charts.run.RechargeStory;
import curbwatt.engine.study.recharge.Missing;
import curbwatt.engine.study.recharge.RechargeResult;
import curbwatt.engine.study.recharge.SceneCharge;
import curbwatt.engine.study.recharge.ShiftAnswer;
import curbwatt.engine.study.recharge.ShiftOutcome;
import curbwatt.engine.study.recharge.WayBack;
import java.util.List;
import java.util.Locale;

/** What gives the charge back, for other tools; {@code docs/result.md} explains it. */
public final class RechargeJson {

    private RechargeJson() {}

    /** The whole document. */
    public static String of(RechargeStory story) {
        RechargeResult result = story.result();
        return JsonText.of(new JsonObject()
                .with("study", "recharge")
                .with("format", 1)
                .with("source", story.scenario().source())
                .with("title", story.scenario().title())
                .with(
                        "batteries",
                        result.missing().stream().map(RechargeJson::missing).toList())
                .with("missingAh", result.missingAh())
                .with("stages", result.stages().stream().sorted().toList())
                .with("airC", result.airC())
                .with("leftOutS", result.leftOutS())
                .with("betweenCallsS", result.plan().betweenCallsS())
                .with("ways", result.ways().stream().map(RechargeJson::way).toList())
                .with("lowestIdleWithinADayRpm", result.lowestEverRpm())
                .with("lowestIdleBetweenCallsRpm", result.lowestInTimeRpm())
                .with("shifts", result.shifts().map(RechargeJson::shifts).orElse(null)));
    }

    private static JsonObject missing(Missing battery) {
        return new JsonObject()
                .with("battery", battery.battery())
                .with("capacityAh", battery.capacityAh())
                .with("startChargeFraction", battery.startFraction())
                .with("endChargeFraction", battery.endFraction())
                .with("wantedChargeFraction", battery.wantedFraction())
                .with("missingAh", battery.ah());
    }

    private static JsonObject way(WayBack back) {
        return new JsonObject()
                .with("engine", word(back.way().mode().name()))
                .with("engineRpm", back.way().engineRpm())
                .with("alternatorCapacityA", back.capacityA())
                .with("meanLoadA", back.meanLoadA())
                .with("back80S", back.timeS(0.8))
                .with("back90S", back.timeS(0.9))
                .with("backS", back.backS())
                .with("mostBackFraction", back.mostFraction())
                .with("limit", back.limit().map(limit -> word(limit.name())).orElse(null));
    }

    private static JsonObject shifts(ShiftAnswer answer) {
        return new JsonObject()
                .with("keepsUp", answer.keepsUp())
                .with("wantedChargeFraction", answer.wantedFraction())
                .with("course", word(answer.outcome().course().name()))
                .with("days", answer.outcome().roster().days())
                .with("lastScenesBeginWithFraction", answer.outcome().settledFraction())
                .with("longerDrivePerDayS", answer.longerDriveS())
                .with("idleRpm", answer.idleRpm());
    }

    private static String word(String name) {
        return name.toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** Charge over time, a line for each battery, way and moment. */
    public static String courses(RechargeResult result) {
        StringBuilder text = new StringBuilder("engine,engineRpm,timeS,battery,chargeFraction\n");
        for (WayBack back : result.ways()) {
            back.points().forEach(point -> {
                for (int i = 0; i < back.missing().size(); i++) {
                    line(
                            text,
                            word(back.way().mode().name()),
                            DigitText.of(back.way().engineRpm()),
                            DigitText.of(point.timeS()),
                            quoted(back.missing().get(i).battery()),
                            DigitText.of(point.chargeFractions().get(i)));
                }
            });
        }
        return text.toString();
    }

    /** Charge before each scene of the shift pattern as it is. */
    public static String scenes(ShiftOutcome outcome) {
        StringBuilder text = new StringBuilder("timeS,battery,chargeFraction\n");
        for (SceneCharge scene : outcome.scenes()) {
            for (int i = 0; i < scene.chargeFractions().size(); i++) {
                line(
                        text,
                        DigitText.of(scene.timeS()),
                        quoted(outcome.batteries().get(i)),
                        DigitText.of(scene.chargeFractions().get(i)));
            }
        }
        return text.toString();
    }

    private static void line(StringBuilder text, String... cells) {
        text.append(String.join(",", List.of(cells))).append('\n');
    }

    private static String quoted(String name) {
        return '"' + name.replace("\"", "\"\"") + '"';
    }
}
