package curbwatt.charts.output;

import curbwatt.charts.run.RunStory;
import curbwatt.engine.result.BatterySummary;
import curbwatt.engine.result.CircuitSummary;
import curbwatt.engine.result.CrankCheck;
import curbwatt.engine.result.EngineSummary;
import curbwatt.engine.result.LinkSummary;
import curbwatt.engine.result.LoadSummary;
import curbwatt.engine.result.PhaseSummary;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.vehicle.BatteryInstallation;

/** The figures of a run. */
final class FiguresJson {

    private FiguresJson() {}

    static JsonObject of(RunStory story) {
        RunResult result = story.result();
        return new JsonObject()
                .with("durationS", result.durationS())
                .with("lowestVoltageV", result.lowestV())
                .with("lowestVoltageAtS", result.lowestAtS())
                .with("endStateOfCharge", result.endChargeFraction())
                .with("lowestStateOfCharge", result.lowestChargeFraction())
                .with("smallestFreezingMarginK", result.smallestFreezingMarginK())
                .with("steps", result.steps())
                .with(
                        "restart",
                        new JsonObject()
                                .with("timeS", result.restartTimeS())
                                .with(
                                        "checks",
                                        result.crankChecks().stream()
                                                .map(FiguresJson::check)
                                                .toList()))
                .with("phases", result.phases().stream().map(FiguresJson::phase).toList())
                .with(
                        "circuits",
                        result.circuits().stream().map(FiguresJson::circuit).toList())
                .with("loads", result.loads().stream().map(FiguresJson::load).toList())
                .with("engine", engine(result.engine()))
                .with(
                        "batteries",
                        result.batteries().stream().map(FiguresJson::summary).toList())
                .with("link", result.link().map(FiguresJson::link).orElse(null))
                .with("battery", battery(story.scenario().vehicle().battery()))
                .with(
                        "auxiliaryBattery",
                        story.scenario()
                                .vehicle()
                                .auxiliary()
                                .map(auxiliary -> battery(auxiliary.installation()))
                                .orElse(null));
    }

    private static JsonObject check(CrankCheck check) {
        return new JsonObject()
                .with("timeS", check.timeS())
                .with("phase", check.phase())
                .with("batteryC", check.batteryC())
                .with("lowestV", check.lowestV())
                .with("lowestLoadsOffV", check.lowestLoadsOffV())
                .with("minimumV", check.minimumV())
                .with("marginV", check.marginV());
    }

    private static JsonObject phase(PhaseSummary phase) {
        return new JsonObject()
                .with("phase", phase.phase())
                .with("startS", phase.startS())
                .with("durationS", phase.durationS())
                .with("engineRan", phase.engineRan())
                .with("meanLoadA", phase.meanLoadA())
                .with("meanAlternatorA", phase.meanAlternatorA())
                .with("meanBatteryA", phase.meanBatteryA())
                .with("lowestV", phase.lowestV())
                .with("highestV", phase.highestV())
                .with("startStateOfCharge", phase.startChargeFraction())
                .with("endStateOfCharge", phase.endChargeFraction())
                .with("alternatorCapacityA", phase.alternatorCapacityA());
    }

    private static JsonObject circuit(CircuitSummary circuit) {
        return new JsonObject()
                .with("circuit", circuit.circuit())
                .with("firstLostS", circuit.firstLostS())
                .with("lostBy", circuit.lostBy().isEmpty() ? null : circuit.lostBy())
                .with("disconnectedS", circuit.disconnectedS())
                .with("chargeAh", circuit.chargeAh())
                .with("peakA", circuit.peakA())
                .with("lowestV", circuit.lowestV());
    }

    private static JsonObject load(LoadSummary load) {
        return new JsonObject()
                .with("load", load.load())
                .with("circuit", load.circuit())
                .with("firstDropOutS", load.firstDropOutS())
                .with("dropOuts", load.dropOuts())
                .with("droppedOutS", load.droppedOutS());
    }

    private static JsonObject engine(EngineSummary engine) {
        return new JsonObject()
                .with("runS", engine.runS())
                .with("highIdleS", engine.highIdleS())
                .with("starts", engine.starts())
                .with("raises", engine.raises())
                .with("fuelLitres", engine.fuelLitres());
    }

    private static JsonObject summary(BatterySummary battery) {
        return new JsonObject()
                .with("battery", battery.battery())
                .with("startStateOfCharge", battery.startChargeFraction())
                .with("endStateOfCharge", battery.endChargeFraction())
                .with("lowestStateOfCharge", battery.lowestChargeFraction())
                .with("dischargedAh", battery.dischargedAh())
                .with("chargedAh", battery.chargedAh())
                .with("lowestV", battery.lowestV())
                .with("smallestFreezingMarginK", battery.smallestFreezingMarginK());
    }

    private static JsonObject link(LinkSummary link) {
        return new JsonObject()
                .with("link", link.link())
                .with("closedS", link.closedS())
                .with("toEquipmentAh", link.toEquipmentAh())
                .with("toStarterAh", link.toStarterAh())
                .with("peakA", link.peakA());
    }

    private static JsonObject battery(BatteryInstallation installation) {
        return BatteryJson.of(installation.battery().parameters())
                .with("name", installation.name())
                .with("capacityHealth", installation.battery().condition().capacityHealthFraction())
                .with("resistanceGrowth", installation.battery().condition().resistanceGrowthFactor());
    }
}
