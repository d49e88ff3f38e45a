package curbwatt.engine.check;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.assignableTo;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.conditions.ArchConditions.be;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noMethods;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.syntax.elements.GivenFieldsConjunction;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;

/** Rules that hold in every module, each read from bytecode. */
public final class HouseRules {

    private static final Set<String> NUMBERS =
            Set.of("double", Double.class.getName(), OptionalDouble.class.getName(), "float");

    /** A name says what the thing is; these say only that it does something. */
    public static final ArchRule SPEAKING_NAMES = classes()
            .should()
            .haveSimpleNameNotEndingWith("Util")
            .andShould()
            .haveSimpleNameNotEndingWith("Utils")
            .andShould()
            .haveSimpleNameNotEndingWith("Manager")
            .andShould()
            .haveSimpleNameNotEndingWith("Helper")
            .andShould()
            .haveSimpleNameNotEndingWith("Impl")
            .andShould()
            .haveSimpleNameNotEndingWith("Processor")
            .andShould()
            .haveSimpleNameNotStartingWith("Abstract")
            .allowEmptyShould(true);

    /** Values are built whole; nothing is set afterwards. A set point is a noun: it gives a value, so it passes. */
    public static final ArchRule NO_SETTERS = noMethods()
            .that()
            .arePublic()
            .and(are("giving nothing but their own object", HouseRules::givesNothing))
            .should()
            .haveNameMatching("set[A-Z].*")
            .allowEmptyShould(true);

    /** A class holds what it needs; exceptions alone inherit. */
    public static final ArchRule NO_INHERITANCE = noInheritanceBut();

    /** A number in a record says its unit; where a component named {@code unit} stands beside it, that one does. */
    public static final ArchRule UNITS_IN_RECORDS = fields().that(
                    are("number components", HouseRules::unitBelongsInName))
            .should(be(are("named with its unit", field -> UnitSuffix.ends(field.getName()))))
            .allowEmptyShould(true);

    /** An array in a record can be changed from outside, and two equal ones differ. */
    public static final ArchRule NO_ARRAYS_IN_RECORDS = noFields()
            .that(are("components", HouseRules::component))
            .should(be(are("arrays", field -> field.getRawType().isArray())))
            .allowEmptyShould(true);

    /** Nothing static can change. */
    public static final ArchRule NO_STATIC_STATE =
            fields().that().areStatic().should().beFinal().allowEmptyShould(true);

    private HouseRules() {}

    /** Fields are final, but for the given packages. */
    public static ArchRule finalFieldsOutside(String... packages) {
        return outside(packages).should().beFinal().allowEmptyShould(true);
    }

    /** As {@link #finalFieldsOutside}, with one class that a decision allows to change elsewhere. */
    public static ArchRule finalFieldsOutsideAndBut(Class<?> exception, String... packages) {
        return outside(packages)
                .and()
                .areNotDeclaredIn(exception)
                .should()
                .beFinal()
                .allowEmptyShould(true);
    }

    private static GivenFieldsConjunction outside(String... packages) {
        return fields().that().areDeclaredInClassesThat().resideOutsideOfPackages(packages);
    }

    /** As {@link #NO_INHERITANCE}, where a library in the given packages can be used in no other way. */
    public static ArchRule noInheritanceBut(String... libraries) {
        DescribedPredicate<JavaClass> free = assignableTo(Throwable.class)
                .or(assignableTo(Enum.class))
                .or(assignableTo(Record.class))
                .or(are(
                        "extending a library that asks for it",
                        type -> type.getRawSuperclass()
                                .filter(resideInAnyPackage(libraries))
                                .isPresent()));
        return classes()
                .that()
                .areNotInterfaces()
                .and(DescribedPredicate.not(free))
                .should(be(are(
                        "without a parent",
                        type -> type.getRawSuperclass()
                                .map(parent -> parent.isEquivalentTo(Object.class))
                                .orElse(true))))
                .allowEmptyShould(true);
    }

    /** No class outside the given packages uses the libraries. */
    public static ArchRule only(Set<String> packages, String... libraries) {
        return noClasses()
                .that()
                .resideOutsideOfPackages(packages.toArray(String[]::new))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(libraries)
                .allowEmptyShould(true);
    }

    private static boolean component(JavaField field) {
        return field.getOwner().isRecord() && !field.getModifiers().contains(JavaModifier.STATIC);
    }

    private static boolean givesNothing(JavaMethod method) {
        String type = method.getRawReturnType().getName();
        return type.equals("void") || type.equals(method.getOwner().getName());
    }

    private static boolean unitBelongsInName(JavaField field) {
        return component(field)
                && NUMBERS.contains(field.getRawType().getName())
                && field.getOwner().tryGetField("unit").isEmpty();
    }

    private static <T> DescribedPredicate<T> are(String description, Predicate<T> test) {
        return DescribedPredicate.describe(description, test);
    }
}
