package curbwatt.charts;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static curbwatt.engine.check.HouseRules.finalFieldsOutside;
import static curbwatt.engine.check.HouseRules.noInheritanceBut;
import static curbwatt.engine.check.HouseRules.only;
import static curbwatt.engine.check.Planted.assertAccepts;
import static curbwatt.engine.check.Planted.assertReports;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.lang.ArchRule;
import curbwatt.engine.check.HouseRules;
import curbwatt.engine.check.ModuleClasses;
import curbwatt.engine.check.Plan;
import curbwatt.planted.InCharts;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The plan of charts and the rules that hold in it alone. */
class ArchitectureTest {

    private static final Plan PLAN = Plan.of(
            "curbwatt.charts",
            List.of(
                    "java..",
                    "javax.imageio..",
                    "org.w3c.dom..",
                    "curbwatt.engine..",
                    "curbwatt.scenarios..",
                    "org.jfree..",
                    "org.apache.batik..",
                    "com.samskivert.mustache..",
                    "com.sun.net.httpserver..",
                    "picocli.."),
            """
            run
            style
            figure:  run style
            wording: run
            output:  run wording
            report:  run style figure wording output
            page:    run style figure wording output
            command: *
            """);

    private static final JavaClasses CHARTS = ModuleClasses.of(ArchitectureTest.class);

    private static final Set<String> WRITING_CLASSES = Set.of(
            "java.io.FileOutputStream",
            "java.io.FileWriter",
            "java.io.RandomAccessFile",
            "java.nio.channels.FileChannel",
            "javax.imageio.stream.FileImageOutputStream");

    static final ArchRule DRAWING_IN_THREE_PACKAGES = only(
            Set.of("curbwatt.charts.style", "curbwatt.charts.dataset", "curbwatt.charts.figure"),
            "org.jfree..",
            "java.awt..",
            "javax.imageio..",
            "org.apache.batik..");

    /** Where files come in; the others see a scenario that is ready, and nothing of the file that it came from. */
    static final ArchRule SCENARIO_FILES_IN_TWO_PACKAGES = only(
            Set.of("curbwatt.charts.command", "curbwatt.charts.page"),
            "curbwatt.scenarios.problem..",
            "curbwatt.scenarios.file..",
            "curbwatt.scenarios.stock..");

    static final ArchRule COMMAND_LINE_IN_ONE_PACKAGE = only(Set.of("curbwatt.charts.command"), "picocli..");

    static final ArchRule SERVER_IN_ONE_PACKAGE = only(Set.of("curbwatt.charts.page"), "com.sun.net.httpserver..");

    static final ArchRule ONLY_COMMAND_EXITS = noClasses()
            .that()
            .resideOutsideOfPackage("curbwatt.charts.command")
            .should()
            .callMethod(System.class, "exit", int.class)
            .orShould()
            .callMethod(Runtime.class, "exit", int.class)
            .orShould()
            .callMethod(Runtime.class, "halt", int.class)
            .allowEmptyShould(true);

    /** The typeface must lie in a temporary file, or Java does not draw with it. */
    static final ArchRule ONLY_OUTPUT_WRITES = noClasses()
            .that()
            .resideOutsideOfPackage("curbwatt.charts.output")
            .and()
            .doNotHaveFullyQualifiedName("curbwatt.charts.style.Typeface")
            .should()
            .callCodeUnitWhere(describe("it writes, moves or deletes a file", ArchitectureTest::writes))
            .allowEmptyShould(true);

    /** The chart library is extended where it draws; commands are filled in by the command line library. */
    static final ArchRule INHERITANCE_FROM_THE_CHART_LIBRARY = noInheritanceBut("org.jfree..", "org.apache.batik..");

    static final ArchRule ONLY_COMMANDS_CHANGE = finalFieldsOutside("curbwatt.charts.command");

    @TestFactory
    Stream<DynamicTest> eachPackageUsesOnlyWhatThePlanAllows() {
        return PLAN.present(CHARTS).stream()
                .map(row -> DynamicTest.dynamicTest(row, () -> PLAN.allows(row).check(CHARTS)));
    }

    @Test
    void thePlanNamesEveryPackage() {
        assertThat(PLAN.unplanned(CHARTS)).isEmpty();
    }

    @TestFactory
    Stream<DynamicTest> chartsKeepTheRules() {
        return Stream.of(
                        PLAN.noCycles(),
                        HouseRules.SPEAKING_NAMES,
                        HouseRules.NO_SETTERS,
                        HouseRules.NO_STATIC_STATE,
                        HouseRules.UNITS_IN_RECORDS,
                        INHERITANCE_FROM_THE_CHART_LIBRARY,
                        ONLY_COMMANDS_CHANGE,
                        DRAWING_IN_THREE_PACKAGES,
                        SCENARIO_FILES_IN_TWO_PACKAGES,
                        COMMAND_LINE_IN_ONE_PACKAGE,
                        SERVER_IN_ONE_PACKAGE,
                        ONLY_COMMAND_EXITS,
                        ONLY_OUTPUT_WRITES)
                .map(rule -> DynamicTest.dynamicTest(rule.getDescription(), () -> rule.check(CHARTS)));
    }

    @Test
    void plantedViolationsAreReported() {
        assertReports(DRAWING_IN_THREE_PACKAGES, InCharts.DrawsWithChart.class);
        assertReports(DRAWING_IN_THREE_PACKAGES, InCharts.DrawsWithColour.class);
        assertReports(DRAWING_IN_THREE_PACKAGES, InCharts.DrawsWithSvg.class);
        assertReports(COMMAND_LINE_IN_ONE_PACKAGE, InCharts.Commands.class);
        assertReports(SERVER_IN_ONE_PACKAGE, InCharts.Serves.class);
        assertReports(ONLY_COMMAND_EXITS, InCharts.Exits.class);
        assertReports(ONLY_COMMAND_EXITS, InCharts.Halts.class);
        assertReports(ONLY_OUTPUT_WRITES, InCharts.Writes.class);
        assertReports(ONLY_OUTPUT_WRITES, InCharts.WritesByStream.class);
        assertAccepts(ONLY_OUTPUT_WRITES, InCharts.Reads.class);
    }

    private static boolean writes(JavaCall<?> call) {
        String owner = call.getTargetOwner().getName();
        String name = call.getName();
        boolean byName = owner.equals("java.nio.file.Files")
                && name.matches(
                        "write.*|new(Output|Buffered|Byte)(Stream|Writer|Channel)|create.*|copy|move|delete.*|set.*");
        boolean toFile = call.getTarget().getRawParameterTypes().stream()
                .anyMatch(type -> type.getName().equals("java.io.File"));
        return byName
                || WRITING_CLASSES.contains(owner)
                || (owner.equals("java.io.PrintWriter") && toFile)
                || (owner.equals("java.io.PrintStream") && toFile)
                || (owner.equals("javax.imageio.ImageIO") && name.equals("write") && toFile)
                || (owner.equals("java.io.File") && name.matches("create.*|delete.*|mkdirs?|renameTo|set.*"));
    }
}
