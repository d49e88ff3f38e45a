package curbwatt.scenarios;

import static curbwatt.engine.check.HouseRules.finalFieldsOutside;
import static curbwatt.engine.check.HouseRules.only;
import static curbwatt.engine.check.Planted.assertReports;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.lang.ArchRule;
import curbwatt.engine.check.HouseRules;
import curbwatt.engine.check.ModuleClasses;
import curbwatt.engine.check.Plan;
import curbwatt.engine.check.Repeatability;
import curbwatt.planted.InScenarios;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The plan of scenarios and the rules that hold in it alone. */
class ArchitectureTest {

    private static final Plan PLAN = Plan.of(
            "curbwatt.scenarios",
            List.of(
                    "java.io..",
                    "java.lang..",
                    "java.math..",
                    "java.net..",
                    "java.nio..",
                    "java.text..",
                    "java.util..",
                    "curbwatt.engine..",
                    "com.fasterxml.jackson.annotation..",
                    "tools.jackson..",
                    "com.networknt.."),
            """
            problem
            file
            json:     problem file
            stock:    problem file json
            check:    problem file stock
            assemble: *
            """);

    private static final JavaClasses SCENARIOS = ModuleClasses.of(ArchitectureTest.class);

    /** Both generations of Jackson are named: the older one may come in through a library. */
    static final ArchRule JSON_IN_ONE_PACKAGE = only(
            Set.of("curbwatt.scenarios.json"),
            "com.fasterxml.jackson.databind..",
            "com.fasterxml.jackson.core..",
            "tools.jackson..",
            "com.networknt..");

    @TestFactory
    Stream<DynamicTest> eachPackageUsesOnlyWhatThePlanAllows() {
        return PLAN.present(SCENARIOS).stream()
                .map(row -> DynamicTest.dynamicTest(row, () -> PLAN.allows(row).check(SCENARIOS)));
    }

    @Test
    void thePlanNamesEveryPackage() {
        assertThat(PLAN.unplanned(SCENARIOS)).isEmpty();
    }

    @TestFactory
    Stream<DynamicTest> scenariosKeepTheRules() {
        return Stream.of(
                        PLAN.noCycles(),
                        HouseRules.SPEAKING_NAMES,
                        HouseRules.NO_INHERITANCE,
                        HouseRules.NO_SETTERS,
                        HouseRules.NO_STATIC_STATE,
                        HouseRules.UNITS_IN_RECORDS,
                        finalFieldsOutside(),
                        Repeatability.NO_CLOCK_NO_UNSEEDED_CHANCE,
                        JSON_IN_ONE_PACKAGE)
                .map(rule -> DynamicTest.dynamicTest(rule.getDescription(), () -> rule.check(SCENARIOS)));
    }

    @Test
    void plantedViolationsAreReported() {
        assertReports(JSON_IN_ONE_PACKAGE, InScenarios.Binds.class);
        assertReports(JSON_IN_ONE_PACKAGE, InScenarios.Validates.class);
    }
}
