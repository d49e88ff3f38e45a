package curbwatt.engine.study.idle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.powertrain.EngineMode;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.study.Question;
import curbwatt.engine.study.RunPool;
import curbwatt.engine.study.StudyWatch;
import curbwatt.engine.study.idle.money.Prices;
import curbwatt.engine.verdict.Requirement;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class IdleStudyTest {

    private static final IdlePlan FUEL_ALONE = new IdlePlan(100, Set.of("engine"), Optional.empty());
    private static final IdlePlan PRICED =
            new IdlePlan(100, Set.of("engine"), Optional.of(new Prices("", 1.6, 2, 0.1, 350, 1200, 10)));
    private static final RunPool TWO = new RunPool(2);

    private static IdleResult run(Question question, IdlePlan plan, int threads) {
        return new IdleStudy(question, plan).run(new RunPool(threads), StudyWatch.none());
    }

    @Test
    void theAnswerDoesNotDependOnTheNumberOfThreads() {
        IdleResult one = run(IdleTruck.question(24), PRICED, 1);
        IdleResult three = run(IdleTruck.question(24), PRICED, 3);
        assertThat(three).isEqualTo(one);
    }

    /** A weak watch needs no engine; a heavy one does; where it turns lies where a fine sweep by hand has it. */
    @Test
    void theTimeAtWhichTheBatteryAloneNoLongerHoldsIsThatOfASweep() {
        Question question = IdleTruck.question(8);
        IdleStudy study = new IdleStudy(question, FUEL_ALONE);
        IdleResult result = study.run(TWO, StudyWatch.none());
        Flip flip = result.flips().stream()
                .filter(one -> one.lever() == Lever.SCENE_HOURS)
                .findFirst()
                .orElseThrow();
        assertThat(result.base().bestWay()).contains(IdleWay.ENGINE_OFF);

        double swept = 1;
        while (study.at(Lever.SCENE_HOURS, swept, TWO).bestWay().equals(Optional.of(IdleWay.ENGINE_OFF))) {
            swept += 0.02;
        }
        assertThat(flip.factor()).isCloseTo(swept - 0.01, within(0.0125));
        assertThat(study.at(Lever.SCENE_HOURS, swept, TWO).bestWay()).isEqualTo(flip.to());
    }

    /** A brute-force sweep of every price: the answer changes where the closed form says, and nowhere nearer. */
    @Test
    void pricesChangeTheAnswerWhereASweepSaysSo() {
        IdleCase base = run(IdleTruck.question(24), PRICED, 2).base();
        List<Flip> flips = new MoneyFlips(base).all();
        assertThat(flips).extracting(Flip::lever).contains(Lever.SCENES_PER_YEAR, Lever.AUTOMATIC_START_PRICE);
        for (Lever lever : List.of(Lever.FUEL_PRICE, Lever.SCENES_PER_YEAR, Lever.AUTOMATIC_START_PRICE)) {
            for (int factor = 2; factor < 4000; factor++) {
                double at = factor / 200.0;
                boolean changed = !moved(base, lever, at).bestWay().equals(base.bestWay());
                boolean beyond = flips.stream()
                        .filter(flip -> flip.lever() == lever)
                        .anyMatch(flip -> flip.factor() < 1 ? at < flip.factor() : at > flip.factor());
                assertThat(changed).as(lever + " times " + at).isEqualTo(beyond);
            }
        }
    }

    private static IdleCase moved(IdleCase base, Lever lever, double factor) {
        Prices prices = base.plan().prices().orElseThrow();
        boolean scenes = lever == Lever.SCENES_PER_YEAR;
        return base.by(new IdlePlan(
                (scenes ? factor : 1) * base.plan().scenesPerYear(),
                base.plan().engineStages(),
                Optional.of(new Prices(
                        "",
                        (lever == Lever.FUEL_PRICE ? factor : 1) * prices.fuelMoneyPerLitre(),
                        prices.wearMoneyPerH(),
                        prices.wearMoneyPerStart(),
                        prices.idleControlMoney(),
                        (lever == Lever.AUTOMATIC_START_PRICE ? factor : 1) * prices.automaticStartMoney(),
                        prices.deviceYears()))));
    }

    @Test
    void theBestWayServesAndNoNeighbourThatServesTakesLess() {
        for (Tried tried : run(IdleTruck.question(24), FUEL_ALONE, 2).tried()) {
            WayOutcome best = tried.outcome().best().orElseThrow();
            assertThat(best.serves()).isTrue();
            assertThat(tried.outcome().outcomes())
                    .filteredOn(WayOutcome::serves)
                    .allSatisfy(other -> assertThat(tried.outcome().cost(other))
                            .isGreaterThanOrEqualTo(tried.outcome().cost(best) * (1 - 1e-9)));
        }
    }

    @Test
    void aSceneThatNeverIdlesIdlesWhereItIsOff() {
        Simulation off = Simulation.of(IdleTruck.truck(12), IdleTruck.scene(EngineMode.OFF));
        IdleDevices devices = IdleDevices.of(off.vehicle());
        Scene idling =
                new Standing(IdleWay.IDLING, devices, Set.of("engine")).of(off).scene();
        assertThat(idling.phases().get(1).mode()).isEqualTo(EngineMode.IDLING);
        assertThat(idling.phases().get(1).speed().lowestRpm()).isEqualTo(700);
        Scene stopped = new Standing(IdleWay.ENGINE_OFF, devices, Set.of("engine"))
                .of(off.in(IdleTruck.scene(EngineMode.IDLING)))
                .scene();
        assertThat(stopped.phases().get(1).mode()).isEqualTo(EngineMode.OFF);
        assertThat(stopped.phases().get(1).stages()).containsExactly("warn");
    }

    @Test
    void whereNothingIsAskedEverythingIsToHold() {
        Question nothing = new Question(IdleTruck.question(12).simulation(), List.of());
        assertThat(IdleStudy.asking(nothing).requirements())
                .contains(new Requirement.HoldCircuits(Set.of("warning", "truck"), 900 + IdleTruck.STANDING_S));
    }

    @Test
    void holdingIsStretchedWithTheStandingAlone() {
        Scene scene = IdleTruck.scene(EngineMode.IDLING);
        SceneStretch twice = new SceneStretch(2);
        assertThat(twice.stretchedS(scene, 600)).isEqualTo(600);
        assertThat(twice.stretchedS(scene, 900 + 3600)).isEqualTo(900 + 7200);
        assertThat(twice.stretchedS(scene, 900 + IdleTruck.STANDING_S + 60))
                .isEqualTo(900 + 2 * IdleTruck.STANDING_S + 60);
    }

    @Test
    void aVehicleThatNeverStandsIsRefused() {
        Question question = IdleTruck.question(12);
        Scene scene = question.simulation().scene();
        Question drive = new Question(
                question.simulation().in(scene.withPhases(scene.phases().subList(0, 1))), question.requirements());
        assertThatThrownBy(() -> new IdleStudy(drive, FUEL_ALONE)).hasMessageContaining("never stands");
    }
}
