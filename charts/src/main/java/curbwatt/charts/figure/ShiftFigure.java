package curbwatt.charts.figure;

import curbwatt.charts.style.HouseStyle;
import curbwatt.charts.style.Palette;
import curbwatt.engine.scene.DayPlan;
import curbwatt.engine.study.recharge.SceneCharge;
import curbwatt.engine.study.recharge.ShiftAnswer;
import curbwatt.engine.study.recharge.ShiftOutcome;
import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jfree.data.Range;

/** Charge before each scene of a shift pattern, as it is and with longer drives. */
public final class ShiftFigure {

    private static final double PERCENT = 100;
    private static final double TOP_PERCENT = 102;

    private ShiftFigure() {}

    /** The picture {@code shifts}. */
    public static Picture of(ShiftAnswer answer, Caption caption) {
        List<CurveSheet.Curve> curves = new ArrayList<>();
        curves.add(curve("as it is", Palette.CHARGE.color(), answer.outcome()));
        answer.longer()
                .ifPresent(longer -> curves.add(curve(
                        String.format(
                                Locale.ROOT,
                                "%.0f min more of driving",
                                answer.longerDriveS().orElseThrow() / 60),
                        Palette.VOLTAGE.color(),
                        longer)));
        double wantedPercent = PERCENT * answer.wantedFraction();
        double lowest = curves.stream()
                .flatMap(curve -> curve.upright().stream())
                .mapToDouble(Double::doubleValue)
                .min()
                .orElse(0);
        return new CurveSheet(
                        "shifts",
                        caption,
                        alternativeText(answer.outcome()),
                        new CurveSheet.Scale(
                                "Day", new Range(0, answer.outcome().roster().days())),
                        new CurveSheet.Scale(
                                "Charge as a scene begins, %",
                                new Range(Math.max(0, Math.min(lowest, wantedPercent) - 5), TOP_PERCENT)),
                        curves,
                        List.of(new CurveSheet.Mark(
                                String.format(Locale.ROOT, "wanted: %.0f %%", wantedPercent),
                                wantedPercent,
                                Palette.INK.color(),
                                false)),
                        List.of())
                .picture();
    }

    private static CurveSheet.Curve curve(String label, Color color, ShiftOutcome outcome) {
        return new CurveSheet.Curve(
                label,
                color,
                HouseStyle.MAIN_LINE,
                outcome.scenes().stream()
                        .map(scene -> scene.timeS() / DayPlan.DAY_S)
                        .toList(),
                outcome.scenes().stream()
                        .map(scene -> PERCENT * scene.leastFraction())
                        .toList());
    }

    private static String alternativeText(ShiftOutcome outcome) {
        List<SceneCharge> scenes = outcome.scenes();
        return scenes.isEmpty()
                ? "No scene begins."
                : String.format(
                        Locale.ROOT,
                        "Charge as each of %d scenes begins: %.0f %% at the first, %.0f %% at the last.",
                        scenes.size(),
                        PERCENT * scenes.get(0).leastFraction(),
                        PERCENT * scenes.get(scenes.size() - 1).leastFraction());
    }
}
