package curbwatt.scenarios.assemble;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.engine.days.Course;
import curbwatt.engine.days.RosterStudy;
import curbwatt.engine.event.Event;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.result.EngineSummary;
import curbwatt.engine.result.RunResult;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.simulation.record.Recorder;
import curbwatt.engine.verdict.Finding;
import curbwatt.engine.verdict.Judge;
import curbwatt.engine.verdict.Requirement;
import curbwatt.engine.verdict.Verdict;
import curbwatt.scenarios.stock.DemoScenarios;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Each demo scenario ends as its comments say, and so does what they invite to try. */
class DemoStoriesTest {
    private final Scenarios scenarios = new Scenarios();

    @Test
    void theNightClosureMeetsEverything() {
        assertThat(verdict(DemoScenarios.text("night-closure")).isMet()).isTrue();
    }

    @Test
    void theSecondBatteryCarriesTheEquipmentAndTheRelayKeepsTheFirstOneFull() {
        String text = DemoScenarios.text("two-batteries");

        assertThat(verdict(text).isMet()).isTrue();
        assertThat(unmet(edited(text, "\"openV\": 12.8", "\"openV\": 12.0")))
                .singleElement()
                .extracting(Finding::requirement)
                .isInstanceOf(Requirement.KeepCharge.class);
    }

    @Test
    void theRaisedIdleCarriesTheClosureThatTheIdleSpeedDoesNot() {
        String text = DemoScenarios.text("high-idle");

        assertThat(verdict(text).isMet()).isTrue();
        EngineSummary engine = result(text).engine();
        assertThat(engine.raises()).isEqualTo(2);
        assertThat(engine.fuelLitres()).isNotEmpty();
        String without = text.replaceFirst("(?s)\\n    \"idleControl\": \\{.*?\\},", "");
        assertThat(without).doesNotContain("idleControl");
        assertThat(unmet(without))
                .filteredOn(finding -> finding.requirement() instanceof Requirement.HoldCircuits)
                .singleElement()
                .satisfies(finding -> assertThat(finding.cause()).isEqualTo("Equipment cutoff"));
        assertThat(firstTripMin(without, "Equipment cutoff")).isBetween(145.0, 155.0);
    }

    @Test
    void sheddingInStepsTakesTheSceneLightsThenTheComputerAndHoldsTheRest() {
        String text = DemoScenarios.text("shed-in-steps");

        assertThat(verdict(text).isMet()).isTrue();
        assertThat(trips(text)).extracting(Event::subject).containsExactly("Scene lights off", "Computer off");
        assertThat(result(text).events()).extracting(Event::kind).doesNotContain(EventKind.FUSE_OPENED);
        String without = edited(
                text.replaceFirst("(?s),\\s*\"steps\": \\[.*?\\n        \\]", ""),
                "\"disconnects\": [\"Roof bar\",",
                "\"disconnects\": [\"Scene lights\", \"Computer\", \"Roof bar\",");
        assertThat(unmet(without))
                .singleElement()
                .satisfies(finding -> assertThat(finding.cause()).isEqualTo("Equipment cutoff"));
        assertThat(firstTripMin(without, "Equipment cutoff")).isBetween(60.0, 70.0);
    }

    @Test
    void theChargerTruckLosesItsEquipmentAlthoughTheEngineRanAndTheStarterBatteryIsFull() {
        String text = DemoScenarios.text("charger-truck");

        assertThat(unmet(text)).singleElement().satisfies(finding -> {
            assertThat(finding.requirement()).isInstanceOf(Requirement.HoldCircuits.class);
            assertThat(finding.cause()).isEqualTo("Equipment cutoff");
        });
        assertThat(verdict(edited(text, "dc-dc-charger-20", "dc-dc-charger-40")).isMet())
                .isTrue();
    }

    @Test
    void theLaneWatchLosesItsEquipmentToAHastyCutoffAlthoughTheBatteryCouldHold() {
        String text = DemoScenarios.text("lane-watch");

        assertThat(unmet(text)).singleElement().satisfies(finding -> {
            assertThat(finding.requirement()).isInstanceOf(Requirement.HoldCircuits.class);
            assertThat(finding.cause()).isEqualTo("Equipment cutoff");
        });
        assertThat(verdict(edited(
                                text, "\"tripV\": 12.2", "\"tripV\": 11.6", "\"tripDelayS\": 5", "\"tripDelayS\": 60"))
                        .isMet())
                .isTrue();
    }

    @Test
    void theWinterBreakdownStrandsTheCrewUnlessTheCutoffActsInTime() {
        String text = DemoScenarios.text("winter-breakdown");

        assertThat(unmet(text))
                .extracting(Finding::requirement)
                .hasAtLeastOneElementOfType(Requirement.WillStart.class);
        assertThat(unmet(edited(
                        text, "\"tripV\": 10.8", "\"tripV\": 11.9", "\"tripDelayS\": 120", "\"tripDelayS\": 60")))
                .extracting(Finding::requirement)
                .hasOnlyElementsOfType(Requirement.HoldCircuits.class);
    }

    @Test
    void theWinterShiftsAreHeldUpByTheCutoffUntilDrivesAreLongerAndEquipmentSleepsNoMore() {
        String text = DemoScenarios.text("winter-shifts");

        assertThat(course(text)).isEqualTo(Course.HELD_BY_CUTOFF);
        assertThat(course(edited(
                        text,
                        "\"durationMin\": 12",
                        "\"durationMin\": 20",
                        "\"durationMin\": 8",
                        "\"durationMin\": 20",
                        "\"runTimeLimitMin\": 4320",
                        "\"runTimeLimitMin\": 60")))
                .isEqualTo(Course.KEEPS_UP);
    }

    private double firstTripMin(String text, String subject) {
        return trips(text).stream()
                        .filter(trip -> trip.subject().equals(subject))
                        .findFirst()
                        .orElseThrow()
                        .timeS()
                / 60;
    }

    private List<Event> trips(String text) {
        return result(text).events().stream()
                .filter(event -> event.kind() == EventKind.CUTOFF_TRIPPED)
                .toList();
    }

    private Course course(String text) {
        ReadyScenario ready = scenarios.read("demo", text);
        return new RosterStudy(ready.vehicle(), ready.roster().orElseThrow())
                .run()
                .course();
    }

    private List<Finding> unmet(String text) {
        return verdict(text).findings().stream()
                .filter(finding -> !finding.met())
                .toList();
    }

    private Verdict verdict(String text) {
        ReadyScenario ready = scenarios.read("demo", text);
        return new Judge(ready.vehicle(), ready.scene(), ready.requirements()).judge(run(ready));
    }

    private RunResult result(String text) {
        return run(scenarios.read("demo", text));
    }

    private static RunResult run(ReadyScenario ready) {
        return Simulation.of(ready.vehicle(), ready.scene()).run(Recorder.none());
    }

    private static String edited(String text, String... replacements) {
        String edited = text;
        for (int i = 0; i < replacements.length; i += 2) {
            assertThat(edited).containsOnlyOnce(replacements[i]);
            edited = edited.replace(replacements[i], replacements[i + 1]);
        }
        return edited;
    }
}
