package curbwatt.charts.figure;

import curbwatt.charts.style.HouseStyle;
import curbwatt.charts.style.Palette;
import curbwatt.engine.study.recharge.RechargeResult;
import curbwatt.engine.study.recharge.WayBack;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jfree.data.Range;

/** How long an idling engine takes to give the charge back, over its speed. */
public final class IdleSpeedFigure {

    private static final double[] SHARES = {1, 0.9, 0.8};
    private static final double ROOM_FACTOR = 1.15;
    private static final double BESIDE_RPM = 50;

    private IdleSpeedFigure() {}

    /**
     * The picture {@code idle-speeds}; empty: fewer than two of the speeds tried give the charge back, so that there is no
     * curve.
     *
     * @param names names of the curves, for all, 90 % and 80 % of the charge
     */
    public static Optional<Picture> of(RechargeResult result, List<String> names, Caption caption) {
        List<WayBack> back =
                result.idling().stream().filter(way -> way.backS().isPresent()).toList();
        if (back.size() < 2 || result.driving().isNothing()) {
            return Optional.empty();
        }
        double slowestS = back.stream()
                .mapToDouble(way -> way.backS().getAsDouble())
                .max()
                .orElseThrow();
        double betweenS = result.plan().betweenCallsS();
        TimeScale scale = TimeScale.of(ROOM_FACTOR * slowestS);
        List<CurveSheet.Curve> curves = new ArrayList<>();
        for (int i = 0; i < SHARES.length; i++) {
            curves.add(curve(back, SHARES[i], names.get(i), i, scale));
        }
        double fastestRpm = back.get(back.size() - 1).way().engineRpm();
        List<CurveSheet.Mark> levels = betweenS > scale.durationS()
                ? List.of()
                : List.of(new CurveSheet.Mark("next call", scale.at(betweenS), Palette.ALARM.color(), false));
        return Optional.of(new CurveSheet(
                        "idle-speeds",
                        caption,
                        alternativeText(back),
                        new CurveSheet.Scale(
                                "Idle speed, 1/min",
                                new Range(back.get(0).way().engineRpm() - BESIDE_RPM, fastestRpm + BESIDE_RPM)),
                        new CurveSheet.Scale(
                                "Time of idling, " + scale.unit(), new Range(0, scale.at(scale.durationS()))),
                        curves,
                        levels,
                        List.of())
                .picture());
    }

    private static CurveSheet.Curve curve(List<WayBack> ways, double share, String name, int place, TimeScale scale) {
        List<Double> across = new ArrayList<>();
        List<Double> upright = new ArrayList<>();
        for (WayBack way : ways) {
            OptionalDouble timeS = way.timeS(share);
            across.add(way.way().engineRpm());
            upright.add(scale.at(timeS.orElseThrow()));
        }
        return new CurveSheet.Curve(
                name,
                Palette.compared(place),
                place == 0 ? HouseStyle.STRONG_LINE : HouseStyle.SIDE_LINE,
                across,
                upright);
    }

    private static String alternativeText(List<WayBack> ways) {
        StringBuilder text = new StringBuilder("Time until all of the charge is back, by idle speed:");
        ways.forEach(way -> text.append(String.format(
                Locale.ROOT,
                " %.0f min at %.0f /min;",
                way.backS().orElseThrow() / 60,
                way.way().engineRpm())));
        return text.toString();
    }
}
