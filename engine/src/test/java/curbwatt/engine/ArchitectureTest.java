package curbwatt.engine;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static curbwatt.engine.check.HouseRules.finalFieldsOutsideAndBut;
import static curbwatt.engine.check.Planted.assertReports;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.lang.ArchRule;
import curbwatt.engine.battery.Terminal;
import curbwatt.engine.check.HouseRules;
import curbwatt.engine.check.ModuleClasses;
import curbwatt.engine.check.Plan;
import curbwatt.engine.check.Repeatability;
import curbwatt.planted.InEngine;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The engine's plan and the rules that hold in the engine alone. */
class ArchitectureTest {

    private static final Plan PLAN =
            Plan.of("curbwatt.engine", List.of("java.lang..", "java.util..", "org.apache.commons.math3.."), """
            quantity
            numeric:       quantity
            battery:       quantity numeric
            battery.label: quantity numeric battery
            alternator:    quantity numeric
            sizing:        quantity numeric battery battery.label
            wiring:        quantity
            protection:    quantity
            load:          quantity
            wear:          quantity
            powertrain:    quantity
            event
            control:       quantity powertrain
            link:          quantity
            vehicle:       quantity battery alternator wiring load control powertrain link protection
            scene:         quantity powertrain
            budget:        alternator load powertrain vehicle scene
            result:        event
            duty:          quantity load powertrain event vehicle scene result
            simulation.clock:   load
            simulation.record:  quantity result
            simulation.part:    battery alternator load wiring powertrain link vehicle scene simulation.clock
            simulation.network: battery powertrain control link vehicle simulation.part
            simulation.book:    battery load powertrain event vehicle scene result simulation.part
            simulation.device:  load control powertrain event link protection vehicle scene \
                                simulation.clock simulation.part simulation.network simulation.book
            simulation.envelope: battery load control vehicle simulation.clock simulation.record simulation.part \
                                 simulation.network simulation.book simulation.device
            simulation:    *
            days:          quantity battery load event vehicle scene result simulation simulation.record wear
            verdict:       quantity alternator powertrain event control vehicle scene result
            study:         quantity battery alternator load control event vehicle scene result simulation \
                           simulation.record powertrain verdict
            study.settings: quantity battery control event powertrain result scene simulation study vehicle verdict
            study.size:     quantity battery battery.label budget control load powertrain protection result scene \
                            simulation sizing study vehicle verdict
            study.idle.money: quantity
            study.idle:     quantity alternator control event powertrain result scene simulation study study.idle.money \
                            vehicle verdict battery
            study.odds:     quantity battery load control event vehicle scene result simulation simulation.record \
                            verdict study powertrain
            study.recharge: quantity battery days event powertrain protection result scene simulation simulation.record study study.idle \
                            vehicle
            """);

    private static final JavaClasses ENGINE = ModuleClasses.of(ArchitectureTest.class);

    static final ArchRule NO_FILES_NO_NETWORK = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.io..", "java.nio..", "java.net..", "javax.net..")
            .allowEmptyShould(true);

    static final ArchRule NO_PRINTING = noClasses()
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err")
            .allowEmptyShould(true);

    /** A terminal follows its battery's temperature: docs/decisions/0023. */
    static final ArchRule ONLY_SIMULATION_CHANGES =
            finalFieldsOutsideAndBut(Terminal.class, "curbwatt.engine.simulation..");

    @TestFactory
    Stream<DynamicTest> eachPackageUsesOnlyWhatThePlanAllows() {
        return PLAN.present(ENGINE).stream()
                .map(row -> DynamicTest.dynamicTest(row, () -> PLAN.allows(row).check(ENGINE)));
    }

    @Test
    void thePlanNamesEveryPackage() {
        assertThat(PLAN.unplanned(ENGINE)).isEmpty();
    }

    @TestFactory
    Stream<DynamicTest> theEngineKeepsTheRules() {
        return Stream.of(
                        PLAN.noCycles(),
                        HouseRules.SPEAKING_NAMES,
                        HouseRules.NO_INHERITANCE,
                        HouseRules.NO_SETTERS,
                        HouseRules.NO_STATIC_STATE,
                        HouseRules.UNITS_IN_RECORDS,
                        HouseRules.NO_ARRAYS_IN_RECORDS,
                        ONLY_SIMULATION_CHANGES,
                        Repeatability.NO_CLOCK_NO_UNSEEDED_CHANCE,
                        NO_FILES_NO_NETWORK,
                        NO_PRINTING)
                .map(rule -> DynamicTest.dynamicTest(rule.getDescription(), () -> rule.check(ENGINE)));
    }

    @Test
    void plantedViolationsAreReported() {
        assertReports(ONLY_SIMULATION_CHANGES, InEngine.Changing.class);
        assertReports(Repeatability.NO_CLOCK_NO_UNSEEDED_CHANCE, InEngine.ReadsTheClock.class);
        assertReports(Repeatability.NO_CLOCK_NO_UNSEEDED_CHANCE, InEngine.ReadsTheDate.class);
        assertReports(Repeatability.NO_CLOCK_NO_UNSEEDED_CHANCE, InEngine.DrawsWithoutSeed.class);
        assertReports(NO_FILES_NO_NETWORK, InEngine.OpensFiles.class);
        assertReports(NO_FILES_NO_NETWORK, InEngine.OpensSockets.class);
        assertReports(NO_PRINTING, InEngine.Prints.class);
    }
}
