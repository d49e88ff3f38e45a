package curbwatt.charts.wording;

import curbwatt.charts.run.RunStory;
import curbwatt.engine.result.BatterySummary;
import curbwatt.engine.result.CrankCheck;
import curbwatt.engine.result.EngineSummary;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.vehicle.EngineEquipment;
import java.util.ArrayList;
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
        List<KeyFigure> figures = new ArrayList<>(batteries(result));
        figures.add(restart(result));
        figures.add(load);
        engine(story).ifPresent(figures::add);
        return List.copyOf(figures);
    }

    private static List<KeyFigure> batteries(RunResult result) {
        if (result.batteries().size() > 1) {
            return List.of(
                    battery("Starter battery at the end", result.batteries().get(0)),
                    battery("Auxiliary battery at the end", result.batteries().get(1)));
        }
        return List.of(
                new KeyFigure("Lowest voltage", PlainText.volts(result.lowestV()), PlainText.after(result.lowestAtS())),
                new KeyFigure(
                        "Charge at the end",
                        PlainText.percent(result.endChargeFraction()),
                        "lowest " + PlainText.percent(result.lowestChargeFraction())));
    }

    /** What the engine did, where fuel or a device that acts on it is part of the question. */
    private static Optional<KeyFigure> engine(RunStory story) {
        if (story.scenario().vehicle().engine().equals(EngineEquipment.none())) {
            return Optional.empty();
        }
        EngineSummary engine = story.result().engine();
        List<String> remarks = new ArrayList<>();
        if (engine.starts() > 0) {
            remarks.add(engine.starts() == 1 ? "1 start" : engine.starts() + " starts");
        }
        if (engine.highIdleS() > 0) {
            remarks.add("idle raised for " + PlainText.time(engine.highIdleS()));
        }
        engine.fuelLitres().ifPresent(litres -> remarks.add(PlainText.number(litres, 1) + " L of fuel"));
        return Optional.of(new KeyFigure("Engine ran", PlainText.time(engine.runS()), String.join(", ", remarks)));
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
