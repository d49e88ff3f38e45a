package curbwatt.charts.output;

import curbwatt.engine.study.odds.Draw;
import curbwatt.engine.study.odds.Input;
import curbwatt.engine.study.odds.OddsResult;
import curbwatt.engine.study.odds.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Every draw with what it came to, as comma-separated values after RFC 4180. */
public final class SamplesCsv {

    private SamplesCsv() {}

    /** The whole file; {@code docs/result.md} explains each column. */
    public static String of(OddsResult result) {
        List<String> heads = new ArrayList<>(List.of("draw"));
        result.inputs().forEach(input -> heads.add(head(input)));
        heads.addAll(List.of(
                "allMet",
                "held",
                "heldFraction",
                "restartMarginV",
                "starts",
                "marginMet",
                "tripS",
                "tripped",
                "nuisance"));
        StringBuilder text = new StringBuilder();
        line(text, heads);
        int number = 0;
        for (Draw draw : result.draws()) {
            List<String> fields = new ArrayList<>(List.of(Integer.toString(++number)));
            draw.values().forEach(value -> fields.add(DigitText.of(value)));
            fields.addAll(fields(draw.outcome()));
            line(text, fields);
        }
        return text.toString();
    }

    private static String head(Input input) {
        return switch (input) {
            case BATTERY_HEALTH -> "batteryHealthFactor";
            case TEMPERATURE -> "temperatureShiftK";
            case LOADS -> "loadFactor";
            case ALTERNATOR_HEAT -> "alternatorHeatFactor";
            case SENSOR -> "sensorErrorV";
            case SCENE_LENGTH -> "sceneLengthFactor";
        };
    }

    private static List<String> fields(Outcome outcome) {
        boolean asked = outcome.heldFraction().isPresent();
        return List.of(
                Boolean.toString(outcome.met()),
                asked ? Boolean.toString(outcome.held()) : "",
                number(outcome.heldFraction()),
                DigitText.of(outcome.restartMarginV()),
                Boolean.toString(outcome.starts()),
                Boolean.toString(outcome.enoughMargin()),
                number(outcome.tripS()),
                Boolean.toString(outcome.tripped()),
                Boolean.toString(outcome.nuisance()));
    }

    private static String number(OptionalDouble value) {
        return value.isPresent() ? DigitText.of(value.getAsDouble()) : "";
    }

    private static void line(StringBuilder text, List<String> fields) {
        text.append(String.join(",", fields)).append("\r\n");
    }
}
