package curbwatt.engine.vehicle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import curbwatt.engine.control.Cutoffs;
import curbwatt.engine.control.SensePoint;
import curbwatt.engine.load.Load;
import curbwatt.engine.load.Loads;
import java.util.List;
import org.junit.jupiter.api.Test;

class VehicleTest {
    private final Bench bench = Bench.usual().with(circuit("a", Loads.current("lamp", 5)));

    @Test
    void loadsComeCircuitByCircuit() {
        Vehicle vehicle = bench.with(circuit("b", Loads.current("fan", 5), Loads.current("pump", 5)))
                .vehicle();
        assertThat(vehicle.loads().map(Load::name)).containsExactly("lamp", "fan", "pump");
    }

    @Test
    void namesStandOnce() {
        refused(bench.with(circuit("a")), "circuit 'a' stands twice");
        refused(bench.with(circuit("b", Loads.current("lamp", 1))), "load 'lamp' stands twice");
        refused(
                bench.with(circuit("b"))
                        .with(Cutoffs.byHand("guard", 11, 0, "a"))
                        .with(Cutoffs.byHand("guard", 11, 0, "b")),
                "cutoff 'guard' stands twice");
    }

    @Test
    void aCircuitHangsOnOneCutoffAlone() {
        refused(
                bench.with(Cutoffs.byHand("one", 11, 0, "a")).with(Cutoffs.byHand("two", 11, 0, "a")),
                "cutoff circuit 'a' stands twice");
    }

    @Test
    void cutoffsNameCircuitsThatAreThere() {
        refused(bench.with(Cutoffs.byHand("guard", 11, 0, "b")), "cutoff 'guard' names circuit 'b'; there are [a]");
        refused(
                bench.with(Cutoffs.sensing(Cutoffs.byHand("guard", 11, 0, "a"), new SensePoint.FeedEnd("c"), 0)),
                "cutoff 'guard' names circuit 'c'");
    }

    @Test
    void aClockKeepsOnePeriod() {
        Load left = Loads.patterned("left", 5, Loads.flashing("k", 500, 0, 0, 250));
        Load right = Loads.patterned("right", 5, Loads.flashing("k", 600, 250, 0, 250));
        refused(bench.with(circuit("b", left, right)), "clock 'k' has two periods: 500.0 and 600.0 ms");
    }

    private static void refused(Bench whole, String because) {
        assertThatIllegalArgumentException().isThrownBy(whole::vehicle).withMessageContaining(because);
    }

    private static Circuit circuit(String name, Load... loads) {
        return new Circuit(name, 0, List.of(loads));
    }
}
