package curbwatt.engine.check;

import static curbwatt.engine.check.Planted.assertAccepts;
import static curbwatt.engine.check.Planted.assertReports;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.lang.ArchRule;
import curbwatt.planted.InHouse;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class HouseRulesTest {

    private static final List<ArchRule> RULES = List.of(
            HouseRules.SPEAKING_NAMES,
            HouseRules.NO_SETTERS,
            HouseRules.NO_INHERITANCE,
            HouseRules.NO_STATIC_STATE,
            HouseRules.UNITS_IN_RECORDS,
            HouseRules.NO_ARRAYS_IN_RECORDS,
            HouseRules.finalFieldsOutside());

    @ParameterizedTest
    @ValueSource(
            classes = {
                InHouse.LoadUtil.class,
                InHouse.LoadManager.class,
                InHouse.LoadHelper.class,
                InHouse.LoadImpl.class,
                InHouse.LoadProcessor.class,
                InHouse.AbstractLoad.class
            })
    void emptyNamesAreReported(Class<?> planted) {
        assertReports(HouseRules.SPEAKING_NAMES, planted);
    }

    @Test
    void inheritanceIsReported() {
        assertReports(HouseRules.NO_INHERITANCE, InHouse.Child.class);
        assertReports(HouseRules.noInheritanceBut("org.elsewhere.."), InHouse.Child.class);
        assertAccepts(HouseRules.noInheritanceBut("curbwatt.planted.."), InHouse.Child.class);
    }

    @Test
    void settersAreReported() {
        assertReports(HouseRules.NO_SETTERS, InHouse.Settable.class);
        assertReports(HouseRules.NO_SETTERS, InHouse.FluentlySettable.class);
    }

    @Test
    void changingFieldsAreReportedWhereTheyMayNotBe() {
        assertReports(HouseRules.NO_STATIC_STATE, InHouse.Shared.class);
        assertReports(HouseRules.finalFieldsOutside("curbwatt.elsewhere"), InHouse.Shared.class);
        assertAccepts(HouseRules.finalFieldsOutside("curbwatt.planted"), InHouse.Shared.class);
        assertAccepts(
                HouseRules.finalFieldsOutsideAndBut(InHouse.Shared.class, "curbwatt.elsewhere"), InHouse.Shared.class);
        assertReports(HouseRules.finalFieldsOutsideAndBut(String.class, "curbwatt.elsewhere"), InHouse.Shared.class);
    }

    @Test
    void numbersWithoutAUnitAreReported() {
        assertReports(HouseRules.UNITS_IN_RECORDS, InHouse.Unitless.class);
        assertReports(HouseRules.UNITS_IN_RECORDS, InHouse.PerhapsUnitless.class);
    }

    @Test
    void arraysInRecordsAreReported() {
        assertReports(HouseRules.NO_ARRAYS_IN_RECORDS, InHouse.Leaking.class);
    }

    @Test
    void confinedLibrariesAreReportedOutsideTheirPackages() {
        assertReports(HouseRules.only(Set.of("curbwatt.elsewhere"), "java.util.."), InHouse.PerhapsUnitless.class);
        assertAccepts(HouseRules.only(Set.of("curbwatt.planted"), "java.util.."), InHouse.PerhapsUnitless.class);
    }

    @Test
    void soundClassesAreAccepted() {
        for (ArchRule rule : RULES) {
            assertAccepts(rule, InHouse.Sound.class);
            assertAccepts(rule, InHouse.Measured.class);
            assertAccepts(rule, InHouse.Refused.class);
            assertAccepts(rule, InHouse.Kind.class);
            assertAccepts(rule, ((Object) InHouse.Kind.ONE).getClass());
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "ratedCurrentA",
                "capacityC20Ah",
                "slopeVPerK",
                "growthPerH",
                "dropVPerA",
                "areaMm2",
                "timeMs",
                "resistanceMilliOhm",
                "resistance25COhm",
                "dutyFraction",
                "fraction",
                "exponent",
                "peukertExponent",
                "energyWh",
                "ratePerVh"
            })
    void unitsAreFoundAtTheEnd(String name) {
        assertThat(UnitSuffix.ends(name)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"current", "levelSOC", "v", "a", "weight", "ratedCurrent", "dutyfraction", "Fraction"})
    void namesWithoutAUnitAreSeen(String name) {
        assertThat(UnitSuffix.ends(name)).isFalse();
    }
}
