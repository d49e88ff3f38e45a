package curbwatt.charts.wording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curbwatt.charts.run.RunStory;
import curbwatt.charts.run.SampleRun;
import curbwatt.charts.run.SensedTrip;
import curbwatt.engine.event.Event;
import curbwatt.engine.event.EventKind;
import curbwatt.engine.verdict.Finding;
import curbwatt.engine.verdict.Judge;
import curbwatt.engine.verdict.Requirement;
import curbwatt.engine.verdict.Verdict;
import java.util.List;
import org.junit.jupiter.api.Test;

class TwoBatteriesTest {

    private static final RunStory RELAY = SampleRun.TWO_BATTERIES.story();
    private static final RunStory CHARGER = SampleRun.CHARGER.story();

    @Test
    void theBatteryThatRanLowIsNamed() {
        assertThat(new Headline(RELAY).sentence())
                .matches(
                        "Cut off too early: 'Light cutoff' opens after 40 min with 5\\d % left in the auxiliary battery;"
                                + " asked were 2 h\\.");
        assertThat(new FindingText(RELAY.verdict().findings().get(2), RELAY).asked())
                .isEqualTo("the starter battery keeps 60 % of its charge");
    }

    @Test
    void theChargeIsThatOfTheBatteryBehindTheCutoff() {
        Event trip = RELAY.result().events().stream()
                .filter(event -> event.kind() == EventKind.CUTOFF_TRIPPED)
                .findFirst()
                .orElseThrow();
        double auxiliary =
                new BatteryText(RELAY).auxiliaryFraction(trip.timeS()).orElseThrow();
        assertThat(auxiliary)
                .isLessThan(trip.stateOfChargeFraction())
                .isCloseTo(RELAY.result().batteries().get(1).lowestChargeFraction(), within(0.06));
        assertThat(new BatteryText(RELAY).auxiliaryFraction(1e9).orElseThrow())
                .isEqualTo(RELAY.result().batteries().get(1).endChargeFraction());
    }

    @Test
    void chartsSpeakOfBoth() {
        assertThat(new ChartTitle(RELAY).balance().title())
                .matches("In 'Lane watch' the batteries carry 3\\d A alone.*");
        assertThat(new ChartTitle(CHARGER)
                        .link(
                                CHARGER.scenario().vehicle().auxiliary().orElseThrow(),
                                CHARGER.result().link().orElseThrow())
                        .title())
                .matches("'Battery link' passes \\d\\.\\d Ah to the equipment node");
        assertThat(KeyFigure.of(RELAY))
                .extracting(KeyFigure::name)
                .startsWith("Starter battery at the end", "Auxiliary battery at the end");
    }

    /** The charger recharges after the trip; over the whole phase that would hide what the battery gave before. */
    @Test
    void aBatteryThatIsDrainedWhileTheEngineRunsIsNotHidden() {
        assertThat(new BalanceFinding(CHARGER).sentence())
                .matches("In 'Clear the lane' the auxiliary battery adds .* A to what the alternator gives.*");
        assertThat(new BalanceFinding(SampleRun.HOLDS.story()).sentence())
                .matches("In 'Lane watch' the battery carries .* A alone");
    }

    @Test
    void ledgersNameTheLink() {
        assertThat(LedgerText.charge(CHARGER.result()))
                .anyMatch(line -> line.matches("'Battery link' gave .* it took .* (more|less) than it gave.*"));
        assertThat(LedgerText.energy(CHARGER.result())).anyMatch(line -> line.contains("the link "));
    }

    /** What the feed of the lights drops at the currents that are drawn through it: 22 A through 12 mΩ. */
    @Test
    void theFeedPartsBatteryAndSensedVoltage() {
        List<SensedTrip> trips = SensedTrip.of(CHARGER);
        assertThat(trips).hasSize(1);
        assertThat(trips.get(0).feedsFromEquipment()).isTrue();
        assertThat(trips.get(0).apartV()).isCloseTo(22 * 0.012, within(0.005));
        assertThat(SensedTrip.of(SampleRun.CUT_OFF_EARLY.story())).isEmpty();
    }

    @Test
    void theChargeAskedOfTheAuxiliaryBatteryIsItsOwn() {
        double lowest = RELAY.result().batteries().get(1).lowestChargeFraction();
        assertThat(auxiliaryFinding(lowest).met()).isTrue();
        Finding drained = auxiliaryFinding(lowest + 0.1);
        assertThat(drained.met()).isFalse();
        assertThat(drained.figure()).isEqualTo(lowest);
        FindingText text = new FindingText(drained, RELAY);
        assertThat(text.asked()).matches("the auxiliary battery keeps \\d+ % of its charge");
        assertThat(text.reason())
                .matches("The auxiliary battery's charge falls to .* were asked\\. It is below that from .* on\\.");
        double atS = new ChargeCrossing(RELAY).decidedS(drained).orElseThrow();
        assertThat(new BatteryText(RELAY).auxiliaryFraction(atS).orElseThrow()).isCloseTo(lowest + 0.1, within(1e-9));
        assertThat(new Headline(new RunStory(
                                RELAY.scenario(),
                                RELAY.result(),
                                RELAY.trace(),
                                RELAY.waveform(),
                                new Verdict(List.of(drained), List.of())))
                        .sentence())
                .startsWith("Drains the auxiliary battery too far: below ");
    }

    private static Finding auxiliaryFinding(double leastFraction) {
        return new Judge(
                        RELAY.scenario().vehicle(),
                        RELAY.scenario().scene(),
                        List.of(new Requirement.KeepAuxiliaryCharge(leastFraction)))
                .judge(RELAY.result())
                .findings()
                .get(0);
    }

    @Test
    void chargeIsBelowWhatWasAskedFromAnInstantOn() {
        RunStory strands = SampleRun.STRANDS.story();
        double atS = new ChargeCrossing(strands).belowS(0.5).orElseThrow();
        assertThat(strands.trace().rows())
                .filteredOn(row -> row.timeS() < atS)
                .allMatch(row -> row.stateOfChargeFraction() >= 0.5)
                .last()
                .satisfies(row -> assertThat(row.timeS()).isGreaterThan(atS - 10.001));
    }
}
