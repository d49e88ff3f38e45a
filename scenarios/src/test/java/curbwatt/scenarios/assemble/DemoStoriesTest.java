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
        assertThat(without).doesNotContain("\"idleControl\":");
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
    void theQuietWatchHoldsByStartsOfItsOwnAndBurnsLessThanIdlingThroughTheNight() {
        String text = DemoScenarios.text("quiet-watch");
        ReadyScenario ready = scenarios.read("demo", text);
        RunResult run = run(ready);

        assertThat(verdict(text).isMet()).isTrue();
        assertThat(run.events())
                .filteredOn(event -> event.kind() == EventKind.ENGINE_STARTED)
                .filteredOn(event -> event.subject().equals("automatic start"))
                .hasSizeBetween(5, 6);
        String without = text.replaceFirst("(?s)\\n    \"automaticStart\": \\{.*?\\},", "");
        assertThat(without).doesNotContain("\"automaticStart\":");
        assertThat(firstTripMin(without, "Equipment cutoff")).isBetween(115.0, 121.0);
        RunResult idling = result(edited(
                without,
                "\"engine\": \"off\", \"durationMin\": 480",
                "\"engine\": \"idling\", \"engineRpm\": 700, \"durationMin\": 480"));
        assertThat(run.engine().runS()).isLessThan(0.6 * idling.engine().runS());
        assertThat(run.engine().fuelLitres().orElseThrow())
                .isLessThan(0.85 * idling.engine().fuelLitres().orElseThrow());
    }

    @Test
    void theColdPackRefusesTheChargeOfTheDriveThatOneFromTheHallTakes() {
        String text = DemoScenarios.text("cold-pack");
        RunResult run = result(text);

        assertThat(run.events())
                .filteredOn(event -> event.kind() == EventKind.PACK_STOPPED)
                .singleElement()
                .satisfies(event -> assertThat(event.subject()).contains("charge cold"));
        assertThat(run.events()).extracting(Event::kind).doesNotContain(EventKind.VOLTAGE_COLLAPSED);
        assertThat(unmet(text)).singleElement().satisfies(finding -> {
            assertThat(finding.requirement()).isInstanceOf(Requirement.HoldCircuits.class);
            assertThat(finding.cause()).isEqualTo("Equipment cutoff");
        });
        assertThat(firstTripMin(text, "Equipment cutoff")).isBetween(115.0, 130.0);
        assertThat(verdict(edited(text, "\"batteryC\": -7", "\"batteryC\": 8")).isMet())
                .isTrue();
    }

    @Test
    void theTappedFeedTakesTheComputerWithItsFuseAndALargerOneHolds() {
        String text = DemoScenarios.text("tapped-feed");
        RunResult run = result(text);

        assertThat(unmet(text))
                .singleElement()
                .extracting(Finding::requirement)
                .isInstanceOf(Requirement.HoldCircuits.class);
        assertThat(run.events())
                .filteredOn(event -> event.kind() == EventKind.FUSE_OPENED)
                .singleElement()
                .satisfies(event -> {
                    assertThat(event.subject()).isEqualTo("Computer");
                    assertThat(event.timeS() / 60).isBetween(150.0, 160.0);
                });
        assertThat(run.circuits())
                .filteredOn(circuit -> circuit.firstLostS().isPresent())
                .singleElement()
                .satisfies(circuit -> assertThat(circuit.circuit()).isEqualTo("Computer"));
        assertThat(verdict(edited(text, "\"ratingA\": 10", "\"ratingA\": 15 ")).isMet())
                .isTrue();
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
