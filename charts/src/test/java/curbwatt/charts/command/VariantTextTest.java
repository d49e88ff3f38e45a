package curbwatt.charts.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import curbwatt.scenarios.file.Setting;
import org.junit.jupiter.api.Test;

class VariantTextTest {

    @Test
    void aNameAndItsSettings() {
        VariantText variant =
                VariantText.of("older, colder: vehicle.battery.capacityHealthPercent=70; scene.start.batteryC=-5");
        assertThat(variant.name()).isEqualTo("older, colder");
        assertThat(variant.settings())
                .containsExactly(
                        new Setting("vehicle.battery.capacityHealthPercent", "70"),
                        new Setting("scene.start.batteryC", "-5"));
    }

    @Test
    void withoutANameTheLastKeysAreTheName() {
        assertThat(VariantText.of("vehicle.cutoffs[0].tripV=11.6; vehicle.alternator=")
                        .name())
                .isEqualTo("tripV 11.6, no alternator");
    }

    @Test
    void signsInsideValuesAndNamesSeparateNothing() {
        VariantText variant = VariantText.of(
                "vehicle.cutoffs[Bar; left: A=B].tripV=11.6; vehicle.engine={\"fuel\": \"diesel\"}; title=\"one; two\"");
        assertThat(variant.settings())
                .containsExactly(
                        new Setting("vehicle.cutoffs[Bar; left: A=B].tripV", "11.6"),
                        new Setting("vehicle.engine", "{\"fuel\": \"diesel\"}"),
                        new Setting("title", "\"one; two\""));
    }

    @Test
    void aVariantThatSetsNothingIsRefused() {
        assertThatThrownBy(() -> VariantText.of("name:"))
                .isInstanceOf(InputException.class)
                .hasMessageContaining("'name:'");
        assertThatThrownBy(() -> VariantText.of("")).hasMessageContaining("sets nothing");
    }
}
