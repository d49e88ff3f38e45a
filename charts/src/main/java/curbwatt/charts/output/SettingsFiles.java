package curbwatt.charts.output;

import curbwatt.charts.wording.SettingText;
import curbwatt.charts.wording.SettingsFinding;
import curbwatt.engine.study.settings.Cell;
import curbwatt.engine.study.settings.CoarseRange;
import curbwatt.engine.study.settings.Failure;
import curbwatt.engine.study.settings.Fate;
import curbwatt.engine.study.settings.Recommendation;
import curbwatt.engine.study.settings.Remedy;
import curbwatt.engine.study.settings.Room;
import curbwatt.engine.study.settings.SettingsResult;
import curbwatt.engine.study.settings.Spread;
import curbwatt.engine.study.settings.TripSetting;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * What a search for settings found, for other tools; {@code docs/result.md} explains it.
 *
 * @param source where the scenario came from
 * @param title the scenario's title
 * @param result what was found
 */
public record SettingsFiles(String source, String title, SettingsResult result) {

    private static final int FORMAT = 1;

    /** The text of {@code result.json}. */
    public String json() {
        return JsonText.of(new JsonObject()
                .with("study", "settings")
                .with("format", FORMAT)
                .with("source", source)
                .with("title", title)
                .with("headline", new SettingsFinding(result).headline())
                .with("cutoff", result.cutoff())
                .with("tripLevelsV", result.map().tripLevelsV())
                .with("tripDelaysS", result.map().tripDelaysS())
                .with(
                        "recloses",
                        result.map().recloses().stream()
                                .map(SettingText::closes)
                                .toList())
                .with("spread", spread(result.plan().spread()))
                .with("present", setting(result.present()).with("fate", fate(result.presentFate())))
                .with(
                        "recommendation",
                        result.recommendation().map(this::recommendation).orElse(null))
                .with(
                        "remedies",
                        result.remedies().stream().map(SettingsFiles::remedy).toList())
                .with("cells", result.map().cells().stream().map(this::cell).toList()));
    }

    /** The text of {@code settings.csv}: one line for each setting. */
    public String csv() {
        StringBuilder text = new StringBuilder(
                "reclose,tripV,tripDelayS,works,reasons,heldS,restartMarginV,firstTripS,roomFactor\n");
        for (Cell cell : result.map().cells()) {
            Fate fate = cell.fate();
            text.append(SettingText.closes(cell.setting().reclose())).append(',');
            text.append(DigitText.of(cell.setting().tripV())).append(',');
            text.append(DigitText.of(cell.setting().tripDelayS())).append(',');
            text.append(cell.works()).append(',');
            text.append(fate.failures().stream()
                            .map(failure -> SettingText.reason(failure.kind()))
                            .distinct()
                            .collect(Collectors.joining("; ")))
                    .append(',');
            text.append(spelled(fate.heldS())).append(',');
            text.append(spelled(fate.restartMarginV())).append(',');
            text.append(spelled(fate.firstTripS())).append(',');
            text.append(cell.works() ? DigitText.of(result.reached().getOrDefault(cell, 0.0)) : "");
            text.append('\n');
        }
        return text.toString();
    }

    private static String spelled(OptionalDouble value) {
        return value.isPresent() && Double.isFinite(value.getAsDouble()) ? DigitText.of(value.getAsDouble()) : "";
    }

    private static JsonObject spread(Spread spread) {
        return new JsonObject()
                .with("sensorV", spread.sensorV())
                .with("timerFraction", spread.timerFraction())
                .with("capacityLossFraction", spread.capacityLossFraction())
                .with("resistanceGrowthFraction", spread.resistanceGrowthFraction())
                .with("airK", spread.airK())
                .with("loadFraction", spread.loadFraction());
    }

    private static JsonObject setting(TripSetting setting) {
        return new JsonObject()
                .with("reclose", SettingText.closes(setting.reclose()))
                .with("tripV", setting.tripV())
                .with("tripDelayS", setting.tripDelayS());
    }

    private static JsonObject fate(Fate fate) {
        return new JsonObject()
                .with("works", fate.isMet())
                .with(
                        "failures",
                        fate.failures().stream().map(SettingsFiles::failure).toList())
                .with("heldS", fate.heldS())
                .with("restartMarginV", fate.restartMarginV())
                .with("firstTripS", fate.firstTripS())
                .with("trips", fate.trips());
    }

    private static JsonObject failure(Failure failure) {
        return new JsonObject()
                .with("reason", SettingText.reason(failure.kind()))
                .with("subject", failure.subject().isEmpty() ? null : failure.subject())
                .with("missing", failure.missing())
                .with("unit", failure.unit())
                .with("atS", failure.atS());
    }

    private JsonObject cell(Cell cell) {
        return setting(cell.setting())
                .with("roomFactor", cell.works() ? (Object) result.reached().getOrDefault(cell, 0.0) : null)
                .with("fate", fate(cell.fate()));
    }

    private JsonObject recommendation(Recommendation advice) {
        return setting(advice.cell().setting())
                .with("fate", fate(advice.cell().fate()))
                .with("room", room(advice.room()))
                .with(
                        "limits",
                        advice.sides().stream()
                                .map(side -> new JsonObject()
                                        .with("side", ResultJson.camelCase(side.side()))
                                        .with(
                                                "failing",
                                                side.failing().map(this::cell).orElse(null)))
                                .toList())
                .with("coarseRange", range(advice.range()))
                .with(
                        "neighbours",
                        advice.neighbours().stream()
                                .map(next -> cell(next.cell()).with("room", room(next.room())))
                                .toList());
    }

    private static JsonObject room(Room room) {
        return new JsonObject()
                .with("roomFactor", room.roomFactor())
                .with(
                        "end",
                        room.end()
                                .map(end -> new JsonObject()
                                        .with("direction", ResultJson.camelCase(end.direction()))
                                        .with("distanceFactor", end.distanceFactor())
                                        .with(
                                                "fate",
                                                end.fate()
                                                        .map(SettingsFiles::fate)
                                                        .orElse(null)))
                                .orElse(null));
    }

    private static JsonObject range(CoarseRange range) {
        return new JsonObject()
                .with("leastV", range.leastV())
                .with("mostV", range.mostV())
                .with("leastS", range.leastS())
                .with("mostS", range.mostS())
                .with("settings", range.settings())
                .with("enoughFactor", range.enoughFactor());
    }

    private static JsonObject remedy(Remedy remedy) {
        return new JsonObject()
                .with("kind", ResultJson.camelCase(remedy.kind()))
                .with("amount", remedy.amount())
                .with("unit", remedy.unit())
                .with("most", remedy.most())
                .with("setting", remedy.setting().map(SettingsFiles::setting).orElse(null));
    }
}
