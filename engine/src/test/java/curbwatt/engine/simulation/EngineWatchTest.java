package curbwatt.engine.simulation;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.engine.control.AutomaticStart;
import curbwatt.engine.control.SensePoint;
import curbwatt.engine.simulation.device.EngineWatch;
import curbwatt.engine.simulation.network.SenseTap;
import curbwatt.engine.simulation.part.EngineState;
import curbwatt.engine.simulation.part.OperatingPoint;
import curbwatt.engine.vehicle.EngineEquipment;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EngineWatchTest {

    private static final double DELAY_S = 30;

    /** What the settings' rule takes as one instant, the time loop must not step over: else nobody tells the engine. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 1e-12, 1e-9, 5e-7, 9e-7})
    void aDelayThatEndsARoundingAfterAStepEndsWithIt(double shortByS) {
        AutomaticStart device = new AutomaticStart(
                "automatic start",
                new SensePoint.Node(),
                12,
                DELAY_S,
                600,
                OptionalDouble.empty(),
                0,
                OptionalDouble.of(600),
                900);
        EngineWatch watch = new EngineWatch(
                new EngineEquipment(Optional.empty(), Optional.of(device), Optional.empty()),
                sense -> SenseTap.starterNode());
        EngineState engine = new EngineState(Vehicles.vehicle(Vehicles.agm92(), List.of()));
        engine.begin(Vehicles.off(3600, 20), 0, false);
        OperatingPoint low = new OperatingPoint(0);
        low.starter.nodeV = 11.5;
        double lengthS = DELAY_S - shortByS;

        double actsS = watch.firstS(0, lengthS, low, low, engine);
        watch.advance(0, lengthS, low, low, engine);

        assertThat(watch.wantsRunning()).isTrue();
        assertThat(actsS).isLessThanOrEqualTo(lengthS);
    }
}
