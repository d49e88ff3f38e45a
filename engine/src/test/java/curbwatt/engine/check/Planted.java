package curbwatt.engine.check;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;

/** Tries a rule on one class alone: a rule that names the wrong thing passes in silence otherwise. */
public final class Planted {

    private Planted() {}

    /** Asserts that the rule reports the class. */
    public static void assertReports(ArchRule rule, Class<?> planted) {
        assertThat(rule.evaluate(new ClassFileImporter().importClasses(planted))
                        .getFailureReport()
                        .getDetails())
                .as("%s, tried on %s", rule.getDescription(), planted.getSimpleName())
                .anySatisfy(line -> assertThat(line).contains(planted.getName()));
    }

    /** Asserts that the rule has nothing to say about the class. */
    public static void assertAccepts(ArchRule rule, Class<?> sound) {
        assertThat(rule.evaluate(new ClassFileImporter().importClasses(sound))
                        .getFailureReport()
                        .getDetails())
                .as("%s, tried on %s", rule.getDescription(), sound.getSimpleName())
                .isEmpty();
    }
}
