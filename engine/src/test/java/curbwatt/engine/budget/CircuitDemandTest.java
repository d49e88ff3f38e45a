package curbwatt.engine.budget;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.load.LoadPattern;
import curbwatt.engine.load.Loads;
import curbwatt.engine.vehicle.Bench;
import curbwatt.engine.vehicle.Circuit;
import java.util.List;
import org.junit.jupiter.api.Test;

class CircuitDemandTest {

    /** Root mean square of a rectangle, as in any handbook of electrical engineering: peak times √share. */
    @Test
    void aLampLitAQuarterOfTheTimeHeatsLikeHalfItsCurrent() {
        CircuitDemand demand = demand(
                new Circuit("c", 0, List.of(Loads.patterned("lamp", 8, Loads.flashing("k", 400, 0, 0, 100), "warn"))));
        assertThat(demand.meanA()).isCloseTo(2, within(1e-9));
        assertThat(demand.heatingA()).isCloseTo(4, within(1e-9));
        assertThat(demand.peakA()).isEqualTo(8);
        assertThat(demand.peakS()).isCloseTo(0.1, within(1e-9));
    }

    @Test
    void loadsInStepHeatLikeOneOfTheirSum() {
        LoadPattern pattern = Loads.flashing("k", 400, 0, 0, 100);
        CircuitDemand demand = demand(new Circuit(
                "c",
                0,
                List.of(Loads.patterned("left", 6, pattern, "warn"), Loads.patterned("right", 2, pattern, "warn"))));
        assertThat(demand.heatingA()).isCloseTo(4, within(1e-9));
    }

    @Test
    void whatDoesNotFlashHeatsByItsMean() {
        CircuitDemand demand = demand(new Circuit("c", 0, List.of(Loads.power("computer", 61, "warn"))));
        assertThat(demand.heatingA()).isCloseTo(5, within(1e-9));
        assertThat(demand.peakS()).isZero();
    }

    private static CircuitDemand demand(Circuit circuit) {
        Bench bench = Bench.usual().with(circuit);
        return CircuitDemand.of(bench.vehicle(), bench.scene(bench.off("p", 60, "warn")), circuit);
    }
}
