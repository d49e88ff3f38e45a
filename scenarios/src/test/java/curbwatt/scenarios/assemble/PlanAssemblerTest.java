package curbwatt.scenarios.assemble;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.wiring.CircuitPlan;
import curbwatt.engine.wiring.DropLimit;
import curbwatt.engine.wiring.WireSpace;
import java.util.List;
import org.junit.jupiter.api.Test;

class PlanAssemblerTest {

    private static List<CircuitPlan> plans(String feed, String rest) {
        return new Scenarios().read("plans.json", """
                        { "format": 1, "title": "Plans",
                          "vehicle": { "name": "Truck", "battery": { "part": "battery-agm-92" },
                            "starter": { "part": "starter-8-cylinder" },
                            "circuits": [{ "name": "Lights", "feed": { %s }, %s
                              "loads": [
                                { "name": "Steady", "ratedCurrentA": 4, "ratedVoltageV": 12, "voltageExponent": 0 },
                                { "name": "Pump", "ratedCurrentA": 10, "ratedVoltageV": 12, "voltageExponent": 0,
                                  "duty": { "onS": 6, "everyS": 60 } }] }] },
                          "scene": { "phases": [
                            { "name": "Watch", "engine": "off", "durationMin": 10, "airC": 20 }] } }
                        """.formatted(feed, rest)).circuitPlans();
    }

    /** 4 A for good and 10 A for a tenth of the time: 5 A on average, √(0.9·4² + 0.1·14²) A to warm the wire, 14 A for 6 s. */
    @Test
    void aWireIsPlannedAtTheCurrentsOfItsScene() {
        CircuitPlan plan = plans("\"areaMm2\": 6, \"lengthM\": 5", "").get(0);
        assertThat(plan.current().meanA()).isCloseTo(5, within(1e-9));
        assertThat(plan.current().heatingA()).isCloseTo(Math.sqrt(34), within(1e-9));
        assertThat(plan.current().peakA()).isCloseTo(14, within(1e-9));
        assertThat(plan.current().peakS()).isEqualTo(6);
        assertThat(plan.run().areaMm2()).isEqualTo(6);
        assertThat(plan.fuse()).isEmpty();
        assertThat(plan.dropLimit()).isEqualTo(DropLimit.OTHER);
        assertThat(plan.place().space()).isEqualTo(WireSpace.OUTSIDE_ENGINE_SPACE);
        assertThat(plan.place().bundled()).isEqualTo(1);
    }

    @Test
    void placeFuseAndDropLimitFollowTheFile() {
        CircuitPlan plan = plans(
                        "\"awg\": \"10\", \"lengthM\": 5, \"inEngineSpace\": true, \"bundledWith\": 3",
                        "\"minimumLoad\": true, \"fuse\": { \"ratingA\": 20, \"ambientC\": 65 },")
                .get(0);
        assertThat(plan.place().space()).isEqualTo(WireSpace.INSIDE_ENGINE_SPACE);
        assertThat(plan.place().bundled()).isEqualTo(4);
        assertThat(plan.place().ambientC()).isEqualTo(65);
        assertThat(plan.fuse().orElseThrow().rating().ratedA()).isEqualTo(20);
        assertThat(plan.dropLimit()).isEqualTo(DropLimit.CRITICAL);
    }

    @Test
    void aResistanceHasNoPlan() {
        assertThat(plans("\"resistanceMilliohm\": 12", "")).isEmpty();
    }
}
