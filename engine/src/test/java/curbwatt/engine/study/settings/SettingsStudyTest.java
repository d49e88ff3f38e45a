package curbwatt.engine.study.settings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import curbwatt.engine.control.RecloseRule;
import curbwatt.engine.study.Answer;
import curbwatt.engine.study.CutoffSetting;
import curbwatt.engine.study.Question;
import curbwatt.engine.study.RunPool;
import curbwatt.engine.study.StudyWatch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** The map and the recommendation agree with a plain loop over single runs. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SettingsStudyTest {

    private static final List<Double> LEVELS_V = List.of(10.8, 11.1, 11.4, 11.7, 12.0, 12.2);
    private static final List<Double> DELAYS_S = List.of(3.0, 30.0, 300.0);
    /** Twice the usual where the range allows, so that rooms are small and the test is quick. */
    private static final Spread WIDE = new Spread(0.2, 0.2, 0.3, 0.5, 20, 0.2);

    private static final Question QUESTION = SettingsTruck.question();

    private final List<Cell> heard = new ArrayList<>();
    private SettingsResult result;

    private static SettingsPlan plan() {
        return new SettingsPlan(Optional.empty(), LEVELS_V, DELAYS_S, List.of(), WIDE);
    }

    private static Answer answer(double tripV, double tripDelayS) {
        return QUESTION.of(CutoffSetting.trip(SettingsTruck.CUTOFF, tripV, tripDelayS))
                .answer();
    }

    @BeforeAll
    void search() {
        result = new SettingsStudy(QUESTION, plan()).run(new RunPool(3), StudyWatch.none(), heard::add);
    }

    @Test
    void everyCellIsWhatASingleRunSays() {
        for (Cell cell : result.map().cells()) {
            Answer answer = answer(cell.setting().tripV(), cell.setting().tripDelayS());
            assertThat(cell.works()).as("%s", cell.setting()).isEqualTo(answer.isMet());
            assertThat(cell.fate().heldS()).isEqualTo(answer.heldS());
            assertThat(cell.fate().firstTripS()).isEqualTo(answer.firstTripS());
            assertThat(cell.fate().restartMarginV()).hasValue(answer.restartMarginV());
        }
        assertThat(result.map().working()).hasSizeBetween(3, 15);
    }

    @Test
    void eachReasonStandsWhereItBelongs() {
        assertThat(kind(5, 0)).isEqualTo(FailureKind.NUISANCE_TRIP);
        assertThat(kind(5, 2)).isEqualTo(FailureKind.CUT_OFF_TOO_EARLY);
        assertThat(result.map().at(0, 2, 1).orElseThrow().works()).isTrue();
        assertThat(result.presentFate().isMet()).isTrue();
    }

    @Test
    void aLowerLevelAndALongerDelayNeverHoldShorterNorLeaveMoreForTheStart() {
        for (Cell cell : result.map().cells()) {
            List<Optional<Cell>> later = List.of(
                    result.map().at(0, cell.level() - 1, cell.delay()),
                    result.map().at(0, cell.level(), cell.delay() + 1));
            later.stream().flatMap(Optional::stream).forEach(next -> {
                assertThat(next.fate().heldS().orElseThrow())
                        .isGreaterThanOrEqualTo(cell.fate().heldS().orElseThrow() - 1e-3);
                assertThat(next.fate().restartMarginV().orElseThrow())
                        .isLessThanOrEqualTo(cell.fate().restartMarginV().orElseThrow() + 1e-3);
            });
        }
    }

    @Test
    void noOtherSettingStandsAsMuchAsTheRecommendedOne() {
        Recommendation advice = result.recommendation().orElseThrow();
        double room = advice.room().roomFactor();
        double beyond = advice.room().end().orElseThrow().distanceFactor();
        assertThat(stands(advice.cell(), room)).isTrue();
        assertThat(stands(advice.cell(), beyond)).isFalse();
        for (Cell cell : result.map().working()) {
            boolean standsAll = stands(cell, beyond);
            for (double distance = 0.25; standsAll && distance <= room; distance += 0.25) {
                standsAll = stands(cell, distance);
            }
            assertThat(standsAll).as("%s", cell.setting()).isFalse();
        }
    }

    @Test
    void theRecommendedSettingPassesEveryCornerItIsSaidToStand() {
        Recommendation advice = result.recommendation().orElseThrow();
        for (double share = 0.25; share <= 1; share += 0.25) {
            double distance = share * advice.room().roomFactor();
            assertThat(stands(advice.cell(), distance)).as("at %s", distance).isTrue();
        }
    }

    @Test
    void theCoarseRangeHoldsSettingsWithRoomEnoughOnly() {
        CoarseRange range = result.recommendation().orElseThrow().range();
        List<Cell> inside = result.map().cells().stream()
                .filter(cell -> cell.setting().tripV() >= range.leastV()
                        && cell.setting().tripV() <= range.mostV()
                        && cell.setting().tripDelayS() >= range.leastS()
                        && cell.setting().tripDelayS() <= range.mostS())
                .toList();
        assertThat(inside).hasSize(range.settings()).allMatch(Cell::works);
        assertThat(inside).contains(result.recommendation().orElseThrow().cell());
        assertThat(inside).allMatch(cell -> result.reached().get(cell) >= range.enoughFactor());
    }

    @Test
    void whatStandsEnoughForTheRangeIsKnownOfEverySettingThatWorks() {
        double enough = result.recommendation().orElseThrow().range().enoughFactor();
        assertThat(enough).isPositive();
        assertThat(result.map().working())
                .allSatisfy(cell -> assertThat(result.reached().get(cell) >= enough)
                        .as("%s", cell.setting())
                        .isEqualTo(stands(cell, enough)));
    }

    @Test
    void limitsAreTheFirstFailingSettingsOnTheWay() {
        Recommendation advice = result.recommendation().orElseThrow();
        Cell higher = advice.sides().stream()
                .filter(limit -> limit.side() == Side.HIGHER_LEVEL)
                .flatMap(limit -> limit.failing().stream())
                .findFirst()
                .orElseThrow();
        assertThat(higher.delay()).isEqualTo(advice.cell().delay());
        for (int level = advice.cell().level(); level < higher.level(); level++) {
            assertThat(result.map().at(0, level, higher.delay()).orElseThrow().works())
                    .isTrue();
        }
        assertThat(higher.works()).isFalse();
        assertThat(advice.neighbours()).hasSizeBetween(3, 8);
    }

    @Test
    void theAnswerDoesNotDependOnTheNumberOfThreads() {
        assertThat(new SettingsStudy(QUESTION, plan()).run(new RunPool(1), StudyWatch.none(), CellListener.none()))
                .isEqualTo(result);
    }

    @Test
    void theListenerHearsOfEveryCell() {
        assertThat(heard).containsExactlyInAnyOrderElementsOf(result.map().cells());
    }

    @Test
    void aTripLevelThatIsNotBelowTheRecloseLevelCannotBeSet() {
        SettingsPlan plan = new SettingsPlan(
                Optional.of(SettingsTruck.CUTOFF),
                List.of(11.4, 12.0),
                List.of(3.0, 30.0),
                List.of(new RecloseRule.AboveVoltage(11.8, 0)),
                WIDE);
        SettingsResult found = new SettingsStudy(QUESTION, plan).run(new RunPool(2), StudyWatch.none(), heard -> {});
        assertThat(found.map()
                        .at(0, 1, 0)
                        .orElseThrow()
                        .fate()
                        .failures()
                        .get(0)
                        .kind())
                .isEqualTo(FailureKind.CANNOT_BE_SET);
        assertThat(found.map().at(0, 0, 0).orElseThrow().fate().failures().stream()
                        .map(Failure::kind))
                .doesNotContain(FailureKind.CANNOT_BE_SET);
    }

    @Test
    void whatCannotBeSetIsNotTakenForOneThatNeverOpensUnderAnotherRule() {
        SettingsPlan plan = new SettingsPlan(
                Optional.of(SettingsTruck.CUTOFF),
                List.of(9.6, 9.8),
                List.of(300.0, 600.0),
                List.of(new RecloseRule.ByHand(), new RecloseRule.AboveVoltage(9.7, 0)),
                WIDE);
        SettingsResult found =
                new SettingsStudy(SettingsTruck.asking(600), plan).run(new RunPool(1), StudyWatch.none(), heard -> {});
        assertThat(found.map().at(0, 1, 0).orElseThrow().fate().trips()).isZero();
        assertThat(found.map().at(1, 1, 0).orElseThrow().fate().failures().stream()
                        .map(Failure::kind))
                .contains(FailureKind.CANNOT_BE_SET);
    }

    @Test
    void whereNoSettingWorksTheLeastChangeThatMakesOneWorkIsFound() {
        Question greedy = SettingsTruck.asking(2.4 * 3600);
        SettingsPlan coarse = new SettingsPlan(
                Optional.empty(), List.of(10.8, 11.0, 11.4), List.of(30.0, 300.0), List.of(), Spread.usual());
        SettingsResult found = new SettingsStudy(greedy, coarse).run(new RunPool(2), StudyWatch.none(), heard -> {});
        assertThat(found.recommendation()).isEmpty();
        assertThat(found.remedies().stream().map(Remedy::kind))
                .containsExactly(Remedy.Kind.MORE_CAPACITY, Remedy.Kind.LESS_LOAD, Remedy.Kind.IDLING_INSTEAD_OF_OFF);
        Remedy capacity = found.remedies().get(0);
        double factor = capacity.amount().orElseThrow();
        Question larger = greedy.of(new BatterySize(factor));
        assertThat(larger.of(capacity.setting().orElseThrow().on(SettingsTruck.CUTOFF))
                        .answer()
                        .isMet())
                .isTrue();
        Question tooSmall = greedy.of(new BatterySize(factor - 0.012));
        assertThat(coarse.tripLevelsV())
                .filteredOn(levelV -> levelV != 11.0)
                .noneMatch(levelV -> tooSmall.of(CutoffSetting.trip(SettingsTruck.CUTOFF, levelV, 30))
                        .answer()
                        .isMet());
    }

    @Test
    void nothingAskedAndNoSuchCutoffAreRefused() {
        assertThatThrownBy(() -> new SettingsStudy(new Question(QUESTION.simulation(), List.of()), plan()))
                .hasMessageContaining("requirements");
        SettingsPlan other = new SettingsPlan(Optional.of("guard"), LEVELS_V, DELAYS_S, List.of(), WIDE);
        assertThatThrownBy(() -> new SettingsStudy(QUESTION, other)).hasMessageContaining("guard");
        assertThatThrownBy(() -> new SettingsPlan(Optional.empty(), List.of(11.5, 11.4), DELAYS_S, List.of(), WIDE))
                .hasMessageContaining("tripLevelsV");
    }

    private FailureKind kind(int level, int delay) {
        return result.map()
                .at(0, level, delay)
                .orElseThrow()
                .fate()
                .failures()
                .get(0)
                .kind();
    }

    /** Every direction, by single runs. */
    private static boolean stands(Cell cell, double distance) {
        for (Direction direction : Direction.values()) {
            Question changed = QUESTION.of(cell.setting().on(SettingsTruck.CUTOFF))
                    .of(direction.at(SettingsTruck.CUTOFF, WIDE, distance));
            if (!changed.answer().isMet()) {
                return false;
            }
        }
        return true;
    }
}
