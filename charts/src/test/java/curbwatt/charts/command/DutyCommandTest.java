package curbwatt.charts.command;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.charts.run.CircuitWiring;
import curbwatt.scenarios.assemble.Scenarios;
import curbwatt.scenarios.stock.DemoScenarios;
import java.util.List;
import org.junit.jupiter.api.Test;

class DutyCommandTest {

    @Test
    void figuresStandBesideTheirLimitsAndNothingIsCertified() {
        Said said = Said.by("duty", "demo:lane-watch", "--minimum", "Radios");
        assertThat(said.exitCode()).isZero();
        assertThat(said.out())
                .contains("a prediction, not a certification")
                .containsPattern("passed +Reserve capacity test .* Ah +limit 33\\.\\d+ Ah")
                .containsPattern("Idle balance test .* A +limit 0\\.00 A")
                .contains("Low-voltage alarm test", "limit 140 s", "recalled, not read again")
                .contains("Minimum continuous load: 'Radios'.");
    }

    @Test
    void theAmbulanceTestRunsAtTheHighIdleOfTheVehicle() {
        assertThat(Said.by("duty", "demo:high-idle").out())
                .containsPattern("Idle balance test \\(KKK-A-1822E\\) +.* A +limit 0\\.00 A")
                .contains("and a medical load of 20 A", "Idle at 650 per minute, the ambulance test at 1100.");
        assertThat(Said.by("duty", "demo:high-idle", "--medical-load", "0").out())
                .contains("Maximum load of the ambulance test: every circuit. Idle");
        assertThat(Said.by("duty", "demo:high-idle", "--medical-load", "200").exitCode())
                .isEqualTo(2);
    }

    @Test
    void aCircuitThatIsNotThereIsRefused() {
        Said said = Said.by("duty", "demo:lane-watch", "--minimum", "Siren");
        assertThat(said.exitCode()).isEqualTo(2);
        assertThat(said.err()).contains("'Siren'", "'Radios'");
    }

    @Test
    void speedAndTemperatureOutOfRangeAreRefused() {
        assertThat(Said.by("duty", "demo:lane-watch", "--idle-rpm", "100").exitCode())
                .isEqualTo(2);
        assertThat(Said.by("duty", "demo:lane-watch", "--air", "90").err())
                .contains("--air is 90", "-40".replace('-', '−'));
    }

    @Test
    void wiringSaysDropAndThatItDoesNotCertify() {
        Said said = Said.by("wiring", "demo:lane-watch", "--set", "vehicle.circuits[Arrow board].fuse=");
        assertThat(said.exitCode()).isZero();
        assertThat(said.out())
                .containsPattern("Arrow board +largest drop; ")
                .contains("ABYC E-11", "not a certificate")
                .containsPattern("Arrow board +NOT KEPT +a fuse at the source +none +yes +practice of the trade");
    }

    @Test
    void wiringHoldsAFuseOfTheScenarioAgainstItsWire() {
        assertThat(Said.by("wiring", "demo:two-batteries", "--set", "vehicle.circuits[Corner heads].fuse=")
                        .out())
                .containsPattern("Roof bar +kept +fuse rating, within the wire's rating +30\\.00 A +80\\.00 A")
                .containsPattern("Corner heads +NOT KEPT +a fuse at the source")
                .doesNotContain("'Scene lights' would be served");
    }

    /** What ships is wired as an installer would be proud of, but for the one feed that means to show a fault. */
    @Test
    void theDemosAreWiredAndFusedWell() {
        Scenarios scenarios = new Scenarios();
        for (String demo : DemoScenarios.names()) {
            assertThat(CircuitWiring.of(scenarios.demo(demo)))
                    .filteredOn(circuit -> circuit.advice().isPresent())
                    .hasSize(6)
                    .filteredOn(circuit -> !circuit.advice().get().allMet())
                    .as(demo)
                    .extracting(circuit -> circuit.circuit().name())
                    .isEqualTo(demo.equals("tapped-feed") ? List.of("Computer") : List.of());
        }
    }
}
