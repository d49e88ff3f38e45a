package curbwatt.charts.figure;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.charts.run.SampleRun;
import curbwatt.engine.control.LowVoltageCutoff;
import curbwatt.engine.control.RecloseRule;
import curbwatt.engine.control.SensePoint;
import curbwatt.engine.vehicle.Vehicle;
import curbwatt.engine.verdict.Requirement;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

class LevelsTest {

    private static LowVoltageCutoff cutoff(String circuit, double tripV, double recloseV) {
        return new LowVoltageCutoff(
                circuit + " off",
                new SensePoint.Node(),
                0,
                0,
                OptionalDouble.empty(),
                tripV,
                30,
                new RecloseRule.AboveVoltage(recloseV, 60),
                OptionalDouble.empty(),
                Set.of(circuit));
    }

    private static Vehicle with(LowVoltageCutoff... cutoffs) {
        Vehicle base = SampleRun.TWO_BATTERIES.story().scenario().vehicle();
        return new Vehicle(
                base.name(),
                base.battery(),
                base.auxiliary(),
                base.alternator(),
                base.circuits(),
                List.of(cutoffs),
                base.starting());
    }

    private static List<String> names(Vehicle vehicle) {
        return Levels.of(vehicle).stream().map(Levels.Level::name).toList();
    }

    private static List<String> circuits() {
        return SampleRun.TWO_BATTERIES.story().scenario().vehicle().circuits().stream()
                .map(circuit -> circuit.name())
                .limit(3)
                .toList();
    }

    @Test
    void oneLevelOfSeveralDevicesIsOneLevel() {
        String first = circuits().get(0);
        String second = circuits().get(1);
        String third = circuits().get(2);
        assertThat(names(with(cutoff(first, 12, 13.2)))).containsExactly("trip 12.00 V", "reclose 13.20 V");
        assertThat(names(with(cutoff(first, 12, 13.2), cutoff(second, 11.8, 13.2))))
                .containsExactly(
                        "trip 12.00 V, " + first + " off", "trip 11.80 V, " + second + " off", "reclose 13.20 V, both");
        assertThat(names(with(cutoff(first, 12, 13.2), cutoff(second, 11.8, 13.2), cutoff(third, 11.8, 13.2))))
                .containsExactly(
                        "trip 12.00 V, " + first + " off",
                        "trip 11.80 V, " + second + " off and " + third + " off",
                        "reclose 13.20 V, all 3");
    }

    @Test
    void chargeAskedOfEachBatteryIsALevel() {
        List<Requirement> asked = List.of(
                new Requirement.KeepCharge(0.9),
                new Requirement.KeepAuxiliaryCharge(0.5),
                new Requirement.WillStart(0));
        assertThat(Levels.ofCharge(asked, true))
                .extracting(Levels.Level::name)
                .containsExactly("90 % asked of starter", "50 % asked of auxiliary");
        assertThat(Levels.ofCharge(asked.subList(0, 1), false))
                .extracting(Levels.Level::name)
                .containsExactly("90 % asked");
    }
}
