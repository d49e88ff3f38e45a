package curbwatt.charts.figure;

import curbwatt.charts.run.SizeStory;
import curbwatt.charts.style.HouseStyle;
import curbwatt.charts.style.Palette;
import curbwatt.engine.study.size.CandidateOutcome;
import curbwatt.engine.study.size.Conditions;
import curbwatt.engine.study.size.HoldCurve;
import curbwatt.engine.study.size.SizeResult;
import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jfree.data.Range;

/** Hold time against the battery's size, at several temperatures and two ages. */
public final class HoldFigure {

    private static final double HOUR_S = 3600;
    private static final double ROOM_ABOVE = 1.04;

    private HoldFigure() {}

    /**
     * The picture {@code hold}.
     *
     * @param story the sizing
     * @param caption the words above it
     */
    public static Picture of(SizeStory story, Caption caption) {
        SizeResult result = story.result();
        List<HoldCurve.Point> first = result.curves().get(0).points();
        Range sizes =
                new Range(first.get(0).c20Ah(), first.get(first.size() - 1).c20Ah());
        double requiredH = result.requiredS() / HOUR_S;
        return new CurveSheet(
                        "hold",
                        caption,
                        alternativeText(result),
                        new CurveSheet.Scale("Size of the battery, 20 h capacity of its label, Ah", sizes),
                        new CurveSheet.Scale(
                                "Held from the scene's start, h",
                                new Range(0, ROOM_ABOVE * Math.max(requiredH, longestH(result)))),
                        result.curves().stream()
                                .map(curve -> curve(curve, result.stated()))
                                .toList(),
                        List.of(new CurveSheet.Mark(
                                String.format(Locale.ROOT, "asked: %.2f h", requiredH),
                                requiredH,
                                Palette.INK.color(),
                                false)),
                        marks(result, sizes))
                .picture();
    }

    private static double longestH(SizeResult result) {
        return result.curves().stream()
                .flatMap(curve -> curve.points().stream())
                .mapToDouble(point -> point.heldS() / HOUR_S)
                .max()
                .orElse(0);
    }

    private static CurveSheet.Curve curve(HoldCurve curve, Conditions stated) {
        boolean aged = curve.conditions().capacityHealthFraction() == stated.capacityHealthFraction();
        return new CurveSheet.Curve(
                label(curve),
                color(curve.conditions().batteryC(), stated.batteryC()),
                aged ? HouseStyle.MAIN_LINE : HouseStyle.DOTTED_LINE,
                curve.points().stream().map(HoldCurve.Point::c20Ah).toList(),
                curve.points().stream().map(point -> point.heldS() / HOUR_S).toList());
    }

    private static String label(HoldCurve curve) {
        Conditions conditions = curve.conditions();
        return String.format(
                        Locale.ROOT,
                        "%.0f °C, %.0f %% of capacity",
                        conditions.batteryC(),
                        100 * conditions.capacityHealthFraction())
                .replace('-', '−');
    }

    private static Color color(double temperatureC, double statedC) {
        if (temperatureC == statedC) {
            return Palette.INK.color();
        }
        return temperatureC < statedC ? Palette.VOLTAGE.color() : Palette.ALARM.color();
    }

    private static List<CurveSheet.Mark> marks(SizeResult result, Range sizes) {
        List<CurveSheet.Mark> marks = new ArrayList<>();
        result.steps()
                .atOdds()
                .holdsAh()
                .ifPresent(ah -> marks.add(new CurveSheet.Mark(
                        String.format(Locale.ROOT, "needed: %.0f Ah", ah), ah, Palette.HELD.color(), true)));
        for (CandidateOutcome outcome : result.outcomes()) {
            boolean chosen = result.chosen().filter(outcome::equals).isPresent();
            if (sizes.contains(outcome.candidate().c20Ah())) {
                marks.add(new CurveSheet.Mark(
                        outcome.candidate().name() + (chosen ? " ✓" : ""),
                        outcome.candidate().c20Ah(),
                        chosen ? Palette.HELD.color() : Palette.MUTED.color(),
                        false));
            }
        }
        return marks;
    }

    private static String alternativeText(SizeResult result) {
        StringBuilder text = new StringBuilder("Hold time against the size of the battery.");
        for (HoldCurve curve : result.curves()) {
            HoldCurve.Point last = curve.points().get(curve.points().size() - 1);
            text.append(String.format(
                    Locale.ROOT, " %s: %.1f h at %.0f Ah;", label(curve), last.heldS() / HOUR_S, last.c20Ah()));
        }
        return text.toString();
    }
}
