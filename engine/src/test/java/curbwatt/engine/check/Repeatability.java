package curbwatt.engine.check;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitCallTarget;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.lang.ArchRule;
import java.util.Set;

/** Same input, same bytes: nothing asks the clock, and nothing draws without a seed. */
public final class Repeatability {

    private static final Set<String> CALLS = Set.of(
            "java.lang.System.nanoTime",
            "java.lang.System.currentTimeMillis",
            "java.lang.Math.random",
            "java.lang.StrictMath.random",
            "java.util.Calendar.getInstance",
            "java.util.UUID.randomUUID",
            "java.util.concurrent.ThreadLocalRandom.current",
            "java.util.random.RandomGenerator.getDefault",
            "org.apache.commons.math3.util.FastMath.random");

    private static final Set<String> CONSTRUCTORS_WITHOUT_ARGUMENTS =
            Set.of("java.util.Date", "java.util.Random", "java.util.SplittableRandom", "java.util.GregorianCalendar");

    /** The rule. */
    public static final ArchRule NO_CLOCK_NO_UNSEEDED_CHANCE = noClasses()
            .should()
            .callCodeUnitWhere(describe("it reads a clock or draws without a seed", Repeatability::clockOrChance))
            .orShould()
            .dependOnClassesThat()
            .resideInAPackage("java.security..")
            .allowEmptyShould(true);

    private Repeatability() {}

    private static boolean clockOrChance(JavaCall<?> call) {
        CodeUnitCallTarget target = call.getTarget();
        String owner = target.getOwner().getName();
        String name = target.getName();
        int arguments = target.getRawParameterTypes().size();
        if (name.equals("<init>")) {
            return arguments == 0
                    && (CONSTRUCTORS_WITHOUT_ARGUMENTS.contains(owner)
                            || owner.startsWith("org.apache.commons.math3.random."));
        }
        return CALLS.contains(owner + "." + name)
                || (owner.startsWith("java.time.") && name.matches("now|system.*|tick.*"))
                || (owner.equals("java.util.Collections") && name.equals("shuffle") && arguments == 1);
    }
}
