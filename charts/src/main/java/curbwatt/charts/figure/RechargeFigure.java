package curbwatt.charts.figure;

import curbwatt.charts.run.RechargeStory;
import curbwatt.charts.style.HouseStyle;
import curbwatt.charts.style.Palette;
import curbwatt.engine.study.recharge.Missing;
import curbwatt.engine.study.recharge.RechargeResult;
import curbwatt.engine.study.recharge.WayBack;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.jfree.data.Range;

/** State of charge of all batteries together over the time of recharging, a curve for each way. */
public final class RechargeFigure {

    private static final double DAY_S = 86400;
    private static final double PERCENT = 100;
    private static final double BELOW_PERCENT = 3;
    private static final double TOP_PERCENT = 100.9;
    private static final double ROOM_FACTOR = 1.1;

    private RechargeFigure() {}

    /**
     * The picture {@code recharge}.
     *
     * @param names of the groups of ways that are as fast as each other, in their order
     */
    public static Picture of(RechargeStory story, List<String> names, Caption caption) {
        RechargeResult result = story.result();
        TimeScale scale = TimeScale.of(lengthS(result));
        List<WayBack> ways = result.groups().stream().map(group -> group.get(0)).toList();
        double wantedPercent = PERCENT
                * charge(
                        result.missing(),
                        result.missing().stream().map(Missing::wantedFraction).toList());
        double lowestPercent = ways.stream()
                .flatMap(way -> way.points().stream())
                .filter(point -> point.timeS() <= scale.durationS())
                .mapToDouble(point -> PERCENT * charge(result.missing(), point.chargeFractions()))
                .min()
                .orElse(0);
        return new CurveSheet(
                        "recharge",
                        caption,
                        alternativeText(ways, names),
                        new CurveSheet.Scale(
                                "Time of recharging, " + scale.unit(), new Range(0, scale.at(scale.durationS()))),
                        new CurveSheet.Scale(
                                "State of charge, %",
                                new Range(
                                        Math.max(0, Math.min(lowestPercent, wantedPercent) - BELOW_PERCENT),
                                        TOP_PERCENT)),
                        IntStream.range(0, ways.size())
                                .mapToObj(i -> curve(ways.get(i), names.get(i), i, scale))
                                .toList(),
                        List.of(new CurveSheet.Mark(
                                String.format(Locale.ROOT, "wanted: %.0f %%", wantedPercent),
                                wantedPercent,
                                Palette.INK.color(),
                                false)),
                        marks(result, scale))
                .picture();
    }

    /** Charge of all batteries over their capacity. */
    private static double charge(List<Missing> batteries, List<Double> chargeFractions) {
        double chargeAh = 0;
        double capacityAh = 0;
        for (int i = 0; i < batteries.size(); i++) {
            chargeAh += chargeFractions.get(i) * batteries.get(i).capacityAh();
            capacityAh += batteries.get(i).capacityAh();
        }
        return chargeAh / capacityAh;
    }

    /** Up to the slowest way that gets there, and the time between calls. */
    private static double lengthS(RechargeResult result) {
        double slowestS = result.ways().stream()
                .mapToDouble(way -> way.backS().orElse(0))
                .max()
                .orElse(0);
        return Math.min(DAY_S, ROOM_FACTOR * Math.max(slowestS, result.plan().betweenCallsS()));
    }

    private static CurveSheet.Curve curve(WayBack way, String name, int place, TimeScale scale) {
        List<Double> across = new ArrayList<>();
        List<Double> upright = new ArrayList<>();
        way.points().stream()
                .filter(point -> point.timeS() <= scale.durationS())
                .forEach(point -> {
                    across.add(scale.at(point.timeS()));
                    upright.add(PERCENT * charge(way.missing(), point.chargeFractions()));
                });
        return new CurveSheet.Curve(
                name,
                Palette.compared(place % Palette.compared()),
                place == 0 ? HouseStyle.STRONG_LINE : HouseStyle.SIDE_LINE,
                across,
                upright);
    }

    private static List<CurveSheet.Mark> marks(RechargeResult result, TimeScale scale) {
        double betweenS = result.plan().betweenCallsS();
        return betweenS > scale.durationS()
                ? List.of()
                : List.of(new CurveSheet.Mark("next call", scale.at(betweenS), Palette.ALARM.color(), true));
    }

    private static String alternativeText(List<WayBack> ways, List<String> names) {
        StringBuilder text = new StringBuilder("State of charge over the time of recharging.");
        for (int i = 0; i < ways.size(); i++) {
            OptionalDouble backS = ways.get(i).backS();
            text.append(' ')
                    .append(names.get(i))
                    .append(
                            backS.isPresent()
                                    ? String.format(Locale.ROOT, ": all after %.0f min;", backS.getAsDouble() / 60)
                                    : ": never all;");
        }
        return text.toString();
    }
}
