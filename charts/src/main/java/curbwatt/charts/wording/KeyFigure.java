package curbwatt.charts.wording;

import curbwatt.charts.run.RunStory;
import curbwatt.engine.result.BatterySummary;
import curbwatt.engine.result.CrankCheck;
import curbwatt.engine.result.RunResult;
import java.util.List;
import java.util.Optional;

/**
 * One of the few figures that stand beside the answer.
 *
 * @param name what it is
 * @param value number and unit
 * @param remark when or where; may be empty
 */
public record KeyFigure(String name, String value, String remark) {

    /** The key figures of a run. */
    public static List<KeyFigure> of(RunStory story) {
        RunResult result = story.result();
        double meanA = 3600 * result.charge().loadsAh() / result.durationS();
        KeyFigure load = new KeyFigure(
                "Mean load",
                PlainText.amperes(meanA),
                PlainText.ampereHours(result.charge().loadsAh()) + " over " + PlainText.time(result.durationS()));
        if (result.batteries().size() > 1) {
            return List.of(
                    battery("Starter battery at the end", result.batteries().get(0)),
                    battery("Auxiliary battery at the end", result.batteries().get(1)),
                    restart(result),
                    load);
        }
        return List.of(
                new KeyFigure("Lowest voltage", PlainText.volts(result.lowestV()), PlainText.after(result.lowestAtS())),
                new KeyFigure(
                        "Charge at the end",
                        PlainText.percent(result.endChargeFraction()),
                        "lowest " + PlainText.percent(result.lowestChargeFraction())),
                restart(result),
                load);
    }

    private static KeyFigure battery(String name, BatterySummary battery) {
        return new KeyFigure(
                name,
                PlainText.percent(battery.endChargeFraction()),
                "lowest " + PlainText.percent(battery.lowestChargeFraction()) + ", "
                        + PlainText.volts(battery.lowestV()));
    }

    private static KeyFigure restart(RunResult result) {
        Optional<CrankCheck> worst = new RestartText(result).worst();
        String room = worst.filter(check -> Double.isFinite(check.marginV()))
                .map(check -> "least margin " + PlainText.volts(check.marginV()))
                .orElse("");
        if (result.restartTimeS().isPresent()) {
            return new KeyFigure(
                    "Would start until", PlainText.time(result.restartTimeS().getAsDouble()), room);
        }
        boolean starts = worst.map(check -> check.marginV() >= 0).orElse(true);
        return new KeyFigure("Would start", starts ? "throughout" : "not always", room);
    }
}
