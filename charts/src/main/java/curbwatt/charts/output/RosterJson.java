package curbwatt.charts.output;

import curbwatt.charts.run.RosterStory;
import curbwatt.engine.days.BatteryDays;
import curbwatt.engine.days.Day;
import curbwatt.engine.result.BatteryDay;
import curbwatt.engine.wear.DepthClass;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;

/** What came of a roster, for other tools; {@code docs/result.md} explains it. */
public final class RosterJson {

    private static final int DEPTH_CLASSES = 10;

    private RosterJson() {}

    /** The whole document. */
    public static String of(RosterStory story) {
        return JsonText.of(new JsonObject()
                .with("version", ResultJson.VERSION)
                .with("source", story.scenario().source())
                .with("title", story.scenario().title())
                .with("patternDays", story.roster().pattern().size())
                .with(
                        "course",
                        story.result().course().name().toLowerCase(Locale.ROOT).replace('_', ' '))
                .with("failedStartDay", number(story.result().failedStartDay()))
                .with("lostMarginDay", number(story.result().lostMarginDay()))
                .with("trips", story.result().trips())
                .with("steps", story.result().run().steps())
                .with(
                        "batteries",
                        story.result().batteries().stream()
                                .map(RosterJson::battery)
                                .toList())
                .with(
                        "days",
                        story.result().days().stream().map(RosterJson::day).toList()));
    }

    private static Object number(OptionalInt day) {
        return day.isPresent() ? (Object) day.getAsInt() : null;
    }

    private static JsonObject battery(BatteryDays battery) {
        return new JsonObject()
                .with("battery", battery.battery())
                .with("capacityAh", battery.capacityAh())
                .with("startChargeFraction", battery.startChargeFraction())
                .with("endChargeFraction", battery.endChargeFraction())
                .with("lowestChargeFraction", battery.lowestChargeFraction())
                .with(
                        "trend",
                        battery.trend()
                                .map(trend -> new JsonObject()
                                        .with("weeklyFraction", trend.weeklyFraction())
                                        .with("fromDay", trend.fromDay())
                                        .with("toDay", trend.toDay()))
                                .orElse(null))
                .with("dischargedAh", battery.throughput().dischargedAh())
                .with("chargedAh", battery.throughput().chargedAh())
                .with("fullDischarges", battery.fullDischarges())
                .with("cyclesByDepth", depths(battery.cycles().byDepth(DEPTH_CLASSES)))
                .with(
                        "life",
                        battery.life()
                                .map(life -> new JsonObject()
                                        .with("wornFraction", life.wornFraction())
                                        .with("lowDays", life.lowDays())
                                        .with("middleDays", life.middleDays())
                                        .with("highDays", life.highDays()))
                                .orElse(null));
    }

    private static List<JsonObject> depths(List<DepthClass> classes) {
        return classes.stream()
                .map(depth -> new JsonObject()
                        .with("fromFraction", depth.fromFraction())
                        .with("toFraction", depth.toFraction())
                        .with("cycles", depth.cycles()))
                .toList();
    }

    private static JsonObject day(Day day) {
        return new JsonObject()
                .with("day", day.day())
                .with("plan", day.plan())
                .with("trips", day.trips())
                .with("starts", day.starts())
                .with("failedStarts", day.failedStarts())
                .with("engineRunS", day.engineRunS())
                .with("fuelLitres", day.fuelLitres())
                .with(
                        "batteries",
                        day.batteries().stream().map(RosterJson::battery).toList());
    }

    private static JsonObject battery(BatteryDay battery) {
        return new JsonObject()
                .with("lowestChargeFraction", battery.lowestChargeFraction())
                .with("endChargeFraction", battery.endChargeFraction())
                .with("dischargedAh", battery.dischargedAh())
                .with("chargedAh", battery.chargedAh());
    }
}
