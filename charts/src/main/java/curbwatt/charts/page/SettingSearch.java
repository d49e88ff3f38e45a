package curbwatt.charts.page;

import curbwatt.charts.output.JsonObject;
import curbwatt.charts.wording.PlainText;
import curbwatt.charts.wording.SettingText;
import curbwatt.charts.wording.SettingsFinding;
import curbwatt.engine.study.StudyWatch;
import curbwatt.engine.study.settings.Cell;
import curbwatt.engine.study.settings.CellListener;
import curbwatt.engine.study.settings.FailureKind;
import curbwatt.engine.study.settings.Fate;
import curbwatt.engine.study.settings.SettingsResult;
import java.util.stream.Collectors;

/**
 * Tells the page of a search for settings while it goes on: the same search, and the same words, as of the command
 * {@code settings}.
 *
 * @param lines where it is told
 * @param turns lets others compute between two settings
 * @param watch ends it
 */
record SettingSearch(Lines lines, Turns turns, Watch watch) implements CellListener, StudyWatch {

    @Override
    public void judged(Cell cell) {
        Fate fate = cell.fate();
        lines.write(at(cell).with("outcome", outcome(fate))
                .with("short", shortly(fate))
                .with("words", fate.isMet() ? "all met" : reason(fate))
                .with("sentence", sentence(fate)));
    }

    @Override
    public void roomed(Cell cell, double room) {
        lines.write(at(cell).with("room", SettingText.room(room)));
    }

    @Override
    public void done(int done, int all) {
        lines.write(new JsonObject().with("done", done).with("all", all));
        turns.letOthersPass(watch);
    }

    /** The answer, with the recommended setting where there is one. */
    void tell(SettingsResult result) {
        SettingsFinding finding = new SettingsFinding(result);
        JsonObject last = new JsonObject()
                .with("finished", true)
                .with("headline", finding.headline())
                .with("reasons", finding.reasons());
        result.recommendation().ifPresent(advice -> last.with("best", at(advice.cell())));
        lines.write(last);
    }

    private static JsonObject at(Cell cell) {
        return new JsonObject().with("column", cell.level()).with("row", cell.delay());
    }

    private static String outcome(Fate fate) {
        if (fate.isMet()) {
            return "met";
        }
        return switch (fate.failures().get(0).kind()) {
            case CANNOT_BE_SET -> "impossible";
            case NUISANCE_TRIP -> "nuisance";
            case CHATTER -> "chatter";
            case CUT_OFF_TOO_EARLY -> "lostEarly";
            case WOULD_NOT_START -> "noStart";
            case LOADS_LOST, CHARGE_TOO_LOW, VOLTAGE_TOO_LOW -> "notMet";
        };
    }

    private static String reason(Fate fate) {
        return SettingText.reason(fate.failures().get(0).kind());
    }

    /** What fits into a square. */
    private static String shortly(Fate fate) {
        if (fate.isMet()) {
            return "holds";
        }
        FailureKind kind = fate.failures().get(0).kind();
        return switch (kind) {
            case CANNOT_BE_SET -> "–";
            case NUISANCE_TRIP -> "nuisance";
            case CHATTER -> "chatter";
            case CUT_OFF_TOO_EARLY, LOADS_LOST ->
                fate.heldS().stream().mapToObj(PlainText::time).findFirst().orElse("lost");
            case WOULD_NOT_START -> "no start";
            case CHARGE_TOO_LOW -> "drained";
            case VOLTAGE_TOO_LOW -> "low volts";
        };
    }

    /** Everything that a setting fails at, or what it leaves. */
    private static String sentence(Fate fate) {
        if (!fate.isMet()) {
            return fate.failures().stream().map(SettingText::clause).collect(Collectors.joining("; ")) + ".";
        }
        return "Does what was asked"
                + fate.restartMarginV().stream()
                        .mapToObj(marginV -> ", and starts with " + PlainText.volts(marginV) + " of margin")
                        .findFirst()
                        .orElse("")
                + ".";
    }
}
