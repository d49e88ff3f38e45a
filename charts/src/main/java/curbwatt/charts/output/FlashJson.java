package curbwatt.charts.output;

import curbwatt.charts.run.FlashComparison;
import curbwatt.charts.run.TimedRun;
import curbwatt.charts.wording.BatteryText;
import curbwatt.charts.wording.FlashText;
import curbwatt.engine.event.Event;
import curbwatt.engine.load.Load;

/** The same scene with other timings of its heads. */
final class FlashJson {

    private FlashJson() {}

    static JsonObject of(FlashComparison comparison) {
        return new JsonObject()
                .with("loads", comparison.heads().stream().map(Load::name).toList())
                .with("closeUpFromS", comparison.closeUp().fromS())
                .with("closeUpToS", comparison.closeUp().toS())
                .with(
                        "runs",
                        comparison.runs().stream()
                                .map(run -> run(comparison, run))
                                .toList())
                .with("sentences", new FlashText(comparison).sentences());
    }

    private static JsonObject run(FlashComparison comparison, TimedRun run) {
        JsonObject json = new JsonObject()
                .with("timing", ResultJson.camelCase(run.timing()))
                .with("asWritten", run.asWritten())
                .with("peakA", run.peakA())
                .with("sagV", comparison.sagV(run))
                .with("lowestV", comparison.lowestV(run))
                .with("tripS", run.trip().map(Event::timeS).orElse(null))
                .with("tripBy", run.trip().map(Event::subject).orElse(null))
                .with(
                        "stateOfChargeAtTrip",
                        run.trip().map(Event::stateOfChargeFraction).orElse(null))
                .with("heldS", run.heldS())
                .with("met", run.story().verdict().isMet());
        BatteryText batteries = new BatteryText(run.story());
        if (batteries.isPair()) {
            json.with(
                    "auxiliaryStateOfChargeAtTrip",
                    run.trip()
                            .map(trip ->
                                    batteries.auxiliaryFraction(trip.timeS()).orElseThrow())
                            .orElse(null));
        }
        return json;
    }
}
