package curbwatt.engine.days;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.load.DropOut;
import curbwatt.engine.load.Inrush;
import curbwatt.engine.load.Load;
import curbwatt.engine.load.LoadPattern;
import curbwatt.engine.load.Loads;
import curbwatt.engine.vehicle.Circuit;
import curbwatt.engine.vehicle.Vehicle;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SteadyLoadsTest {

    @ParameterizedTest
    @ValueSource(doubles = {10.5, 12, 12.8, 14.4})
    void keepTheMeanAtEveryVoltage(double voltageV) {
        List<Load> before = Duty.truck().loads().toList();
        List<Load> after = SteadyLoads.of(Duty.truck()).loads().toList();
        assertThat(after).allMatch(load -> load.pattern() instanceof LoadPattern.Continuous);
        assertThat(sumA(after, voltageV)).isCloseTo(sumA(before, voltageV), within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(doubles = {11, 13.8})
    void countInrushAndStandby(double voltageV) {
        Load pump = new Load(
                "pump",
                10,
                12,
                0.5,
                0.2,
                DropOut.at(9),
                new LoadPattern.Duty(5, 50, 0, 0),
                Set.of("pumping"),
                Inrush.smallMotor(),
                1);
        List<Load> steady = SteadyLoads.of(with(pump)).loads().toList();
        assertThat(sumA(steady, voltageV)).isCloseTo(pump.meanCurrentA(voltageV), within(1e-12));
        assertThat(steady.get(0).standbyCurrentA()).isEqualTo(0.2);
        assertThat(steady.get(1).standbyCurrentA()).isZero();
        assertThat(steady).allMatch(load -> load.stages().equals(Set.of("pumping")));
        assertThat(steady).allMatch(load -> load.dropOut().equals(DropOut.at(9)));
    }

    @Test
    void leaveSteadyLoadsAlone() {
        Vehicle steady = with(Loads.power("dock", 60));
        assertThat(SteadyLoads.of(steady)).isEqualTo(steady);
    }

    private static Vehicle with(Load load) {
        return Duty.stripped().withCircuits(List.of(new Circuit("c", 0.02, List.of(load))));
    }

    private static double sumA(List<Load> loads, double voltageV) {
        return loads.stream().mapToDouble(load -> load.meanCurrentA(voltageV)).sum();
    }
}
