package curbwatt.charts.wording;

import curbwatt.engine.study.odds.Input;
import curbwatt.engine.study.odds.Spread;

/**
 * An uncertain input in words.
 *
 * @param input the input
 */
public record OddsInputText(Input input) {

    /** What it is called. */
    public String name() {
        return switch (input) {
            case BATTERY_HEALTH -> "battery health";
            case TEMPERATURE -> "temperature";
            case LOADS -> "load current";
            case ALTERNATOR_HEAT -> "alternator heat";
            case SENSOR -> "sensor accuracy";
            case SCENE_LENGTH -> "scene length";
        };
    }

    /** What its values are, for a table's row. */
    public String meaning() {
        return switch (input) {
            case BATTERY_HEALTH -> "capacity, of what the scenario says; resistance by its reciprocal";
            case TEMPERATURE -> "air and batteries, above what the scenario says";
            case LOADS -> "all loads, of what their labels say";
            case ALTERNATOR_HEAT -> "output left when hot, of what the scenario says";
            case SENSOR -> "what cutoffs read too much";
            case SCENE_LENGTH -> "phases standing with equipment in use, of what the scenario says";
        };
    }

    /** A value of it: "92 %", "+3.1 K", "−0.04 V". */
    public String value(double value) {
        return switch (input) {
            case TEMPERATURE -> signed(value, 1) + " K";
            case SENSOR -> signed(value, 2) + " V";
            default -> PlainText.percent(value);
        };
    }

    /** How it is spread: "normal about 100 % (sd 10 %), 60 % to 115 %". */
    public String spread(Spread spread) {
        String bounds = value(spread.from()) + " to " + value(spread.to());
        return switch (spread.shape()) {
            case NORMAL -> "normal about " + value(spread.likeliest()) + ", sd " + width(spread.sd()) + ", " + bounds;
            case UNIFORM -> "uniform, " + bounds;
            case TRIANGULAR -> "triangular, likeliest " + value(spread.likeliest()) + ", " + bounds;
            case FIXED -> "fixed at " + value(spread.likeliest());
        };
    }

    private String width(double value) {
        return switch (input) {
            case TEMPERATURE -> PlainText.number(value, 1) + " K";
            case SENSOR -> PlainText.number(value, 3) + " V";
            default -> PlainText.number(100 * value, 1) + " %";
        };
    }

    private static String signed(double value, int decimals) {
        return (value > 0 ? "+" : "") + PlainText.number(value, decimals);
    }
}
