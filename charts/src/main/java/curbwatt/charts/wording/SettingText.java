package curbwatt.charts.wording;

import curbwatt.engine.control.RecloseRule;
import curbwatt.engine.study.settings.CoarseRange;
import curbwatt.engine.study.settings.Direction;
import curbwatt.engine.study.settings.Failure;
import curbwatt.engine.study.settings.FailureKind;
import curbwatt.engine.study.settings.Fate;
import curbwatt.engine.study.settings.Spread;
import curbwatt.engine.study.settings.TripSetting;

/** Settings of a cutoff, what they fail at, and the changes under which they do, in words. */
public final class SettingText {

    private static final double MINUTE_S = 60;

    private SettingText() {}

    /** "11.60 V and 1 min". */
    public static String of(TripSetting setting) {
        return PlainText.volts(setting.tripV()) + " and " + delay(setting.tripDelayS());
    }

    /** A delay: "0.5 s", "1 min 30 s". */
    public static String delay(double delayS) {
        return delayS < 10 && delayS != Math.rint(delayS) ? PlainText.number(delayS, 1) + " s" : PlainText.time(delayS);
    }

    /** What closes it: "by hand", "when the engine runs", "above 13.20 V for 30 s". */
    public static String closes(RecloseRule rule) {
        if (rule instanceof RecloseRule.AboveVoltage above) {
            return "above " + PlainText.volts(above.levelV())
                    + (above.delayS() == 0 ? "" : " for " + delay(above.delayS()));
        }
        return rule instanceof RecloseRule.EngineRunning ? "when the engine runs" : "by hand";
    }

    /** "10.80 to 11.60 V and 1 s to 3 min". */
    public static String of(CoarseRange range) {
        return PlainText.number(range.leastV(), 2) + " to " + PlainText.volts(range.mostV()) + " and "
                + delay(range.leastS()) + " to " + delay(range.mostS());
    }

    /** A reason in two or three words, as it stands in a map. */
    public static String reason(FailureKind kind) {
        return switch (kind) {
            case CANNOT_BE_SET -> "can't be set";
            case NUISANCE_TRIP -> "nuisance trip";
            case CHATTER -> "chatter";
            case CUT_OFF_TOO_EARLY -> "cut off too early";
            case LOADS_LOST -> "loads lost";
            case WOULD_NOT_START -> "would not start";
            case CHARGE_TOO_LOW -> "drained too far";
            case VOLTAGE_TOO_LOW -> "too little voltage";
        };
    }

    /** What a setting fails at, as a clause: "would be cut off 12 min too early". */
    public static String clause(Failure failure) {
        String subject = PlainText.quoted(failure.subject());
        String missing = failure.unit().equals("min")
                ? PlainText.time(MINUTE_S * failure.missing())
                : failure.unit().equals("1")
                        ? PlainText.number(100 * failure.missing(), 1) + " %"
                        : apart(failure.missing()) + " V";
        return switch (failure.kind()) {
            case CANNOT_BE_SET -> "can't be set, because the trip level is not below the reclose level";
            case NUISANCE_TRIP ->
                subject + " would trip " + PlainText.after(failure.atS().orElse(0)) + ", where no trip may be";
            case CHATTER -> "would open and close " + PlainText.count(Math.round(failure.missing()), "time");
            case CUT_OFF_TOO_EARLY -> "would be cut off " + missing + " too early";
            case LOADS_LOST -> subject + " would be lost " + missing + " too early, though no cutoff opens";
            case WOULD_NOT_START ->
                Double.isInfinite(failure.missing())
                        ? "could not crank the engine at all in " + subject
                        : "would miss the start margin by " + missing + " in " + subject;
            case CHARGE_TOO_LOW -> "would drain a battery " + missing + " further than asked";
            case VOLTAGE_TOO_LOW -> subject + " would get " + missing + " too little";
        };
    }

    /** The first reason as a clause; for a change that is more than the model can take, that. */
    public static String clause(Fate fate) {
        return clause(fate.failures().get(0));
    }

    /** A change as a clause: "the sensor reads 0.12 V too little". */
    public static String change(Direction direction, Spread spread, double distance) {
        double by = direction.share() * distance;
        double sensorV = by * spread.sensorV();
        String sensor = sensorV < 0.01 ? PlainText.number(sensorV, 4) + " V" : PlainText.volts(sensorV);
        String timer = percent(by * spread.timerFraction());
        String lost = percent(by * spread.capacityLossFraction());
        String load = percent(by * spread.loadFraction());
        String kelvin = whole(by * spread.airK()) + " K";
        return switch (direction) {
            case SENSOR_READS_LOW -> "the sensor reads " + sensor + " too little";
            case SENSOR_READS_HIGH -> "the sensor reads " + sensor + " too much";
            case DELAY_SHORT -> "the delay is " + timer + " too short";
            case DELAY_LONG -> "the delay is " + timer + " too long";
            case OLDER ->
                "the battery has lost " + lost + " of its capacity and its resistance has grown by "
                        + percent(by * spread.resistanceGrowthFraction());
            case COLDER -> "it is " + kelvin + " colder";
            case WARMER -> "it is " + kelvin + " warmer";
            case HEAVIER -> "the loads draw " + load + " more";
            case LIGHTER -> "the loads draw " + load + " less";
            case ALL_TOWARDS_EARLY ->
                "all comes together: the sensor reads " + sensor + " too little, the delay is "
                        + timer + " too short, the battery has lost " + lost + ", it is " + kelvin
                        + " colder and the loads draw "
                        + load + " more";
            case ALL_TOWARDS_LATE ->
                "all comes together: the sensor reads " + sensor + " too much, the delay is "
                        + timer + " too long, the battery has lost " + lost + ", it is " + kelvin
                        + " colder and the loads draw "
                        + load + " more";
        };
    }

    /** A room: "2.1". */
    public static String room(double roomFactor) {
        return PlainText.number(Math.floor(100 * roomFactor) / 100, 2);
    }

    private static String percent(double fraction) {
        return whole(100 * fraction) + " %";
    }

    /** A whole number, or below 1 two digits behind the point. */
    private static String whole(double value) {
        return PlainText.number(value, value > 0 && value < 0.995 ? 2 : 0);
    }

    /** At least one digit that is not zero. */
    private static String apart(double value) {
        return PlainText.number(value, value < 0.005 ? 4 : 2);
    }
}
