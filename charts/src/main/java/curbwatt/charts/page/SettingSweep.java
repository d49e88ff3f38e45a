package curbwatt.charts.page;

import curbwatt.charts.output.JsonObject;
import curbwatt.charts.run.RunStory;
import curbwatt.charts.wording.Headline;
import curbwatt.charts.wording.PlainText;
import curbwatt.engine.control.LowVoltageCutoff;
import curbwatt.engine.vehicle.Vehicle;
import curbwatt.engine.verdict.Finding;
import curbwatt.engine.verdict.Requirement;
import curbwatt.scenarios.assemble.ReadyScenario;
import java.util.ArrayList;
import java.util.List;

/**
 * A scenario with other settings of one of its cutoffs.
 *
 * @param scenario the scenario as it is
 * @param cutoff which cutoff, by its place in the vehicle
 */
record SettingSweep(ReadyScenario scenario, int cutoff) {

    /** A verdict needs a trace only to say when a charge was not kept. */
    private static final int POINTS = 120;

    /** What comes of a trip level and a delay; {@code outcome} is {@code impossible} where they contradict the rest. */
    JsonObject at(double tripV, double delayS, Watch watch) {
        ReadyScenario changed;
        try {
            changed = changed(tripV, delayS);
        } catch (IllegalArgumentException e) {
            return new JsonObject()
                    .with("outcome", "impossible")
                    .with("short", "–")
                    .with("sentence", e.getMessage());
        }
        RunStory story = RunEndpoint.story(changed, POINTS, watch);
        return new JsonObject()
                .with("outcome", outcome(story))
                .with("short", shortly(story))
                .with("sentence", new Headline(story).sentence());
    }

    /** What fits into a square of the map: how long everything held, or that it did not start. */
    private static String shortly(RunStory story) {
        return switch (outcome(story)) {
            case "met" -> "holds";
            case "noStart" -> "no start";
            case "lostEarly" ->
                story.verdict().findings().stream()
                        .filter(finding -> !finding.met() && finding.requirement() instanceof Requirement.HoldCircuits)
                        .mapToDouble(Finding::figure)
                        .min()
                        .stream()
                        .mapToObj(heldMin -> PlainText.time(60 * heldMin))
                        .findFirst()
                        .orElseThrow();
            default -> "not met";
        };
    }

    private static String outcome(RunStory story) {
        List<Finding> missed = story.verdict().findings().stream()
                .filter(finding -> !finding.met())
                .toList();
        if (missed.stream().anyMatch(finding -> finding.requirement() instanceof Requirement.WillStart)
                || story.result().restartTimeS().isPresent()) {
            return "noStart";
        }
        if (missed.stream().anyMatch(finding -> finding.requirement() instanceof Requirement.HoldCircuits)) {
            return "lostEarly";
        }
        return missed.isEmpty() ? "met" : "notMet";
    }

    private ReadyScenario changed(double tripV, double delayS) {
        Vehicle vehicle = scenario.vehicle();
        List<LowVoltageCutoff> cutoffs = new ArrayList<>(vehicle.cutoffs());
        LowVoltageCutoff before = cutoffs.get(cutoff);
        cutoffs.set(
                cutoff,
                new LowVoltageCutoff(
                        before.name(),
                        before.sense(),
                        before.filterTimeConstantS(),
                        before.sensorErrorV(),
                        before.warningV(),
                        tripV,
                        delayS,
                        before.reclose(),
                        before.runTimeLimitS(),
                        before.circuits()));
        return new ReadyScenario(
                scenario.source(),
                scenario.title(),
                scenario.description(),
                new Vehicle(
                        vehicle.name(),
                        vehicle.battery(),
                        vehicle.auxiliary(),
                        vehicle.alternator(),
                        vehicle.circuits(),
                        cutoffs,
                        vehicle.starting(),
                        vehicle.engine()),
                scenario.circuitPlans(),
                scenario.scene(),
                scenario.roster(),
                scenario.requirements(),
                scenario.studies(),
                scenario.traceSpacingS(),
                scenario.assumptions(),
                scenario.warnings());
    }
}
