package curbwatt.scenarios.problem;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class NearestTest {
    private static final List<String> KEYS = List.of("ratedCurrentA", "ratedVoltageV", "standbyCurrentA", "name");

    @Test
    void aLetterLeftOutSwappedOrInTheWrongCase() {
        assertThat(Nearest.to("ratedCurentA", KEYS)).first().isEqualTo("ratedCurrentA");
        assertThat(Nearest.to("nmae", KEYS)).containsExactly("name");
        assertThat(Nearest.to("RATEDCURRENTA", KEYS)).first().isEqualTo("ratedCurrentA");
    }

    @Test
    void aPartOfTheName() {
        assertThat(Nearest.to("standby", KEYS)).containsExactly("standbyCurrentA");
    }

    @Test
    void nothingFarAway() {
        assertThat(Nearest.to("horn", KEYS)).isEmpty();
    }
}
