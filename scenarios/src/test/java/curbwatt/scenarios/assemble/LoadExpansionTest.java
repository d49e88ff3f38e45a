package curbwatt.scenarios.assemble;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curbwatt.engine.load.Load;
import curbwatt.engine.load.LoadPattern;
import curbwatt.engine.vehicle.Circuit;
import java.util.List;
import org.junit.jupiter.api.Test;

class LoadExpansionTest {
    private static final Scenarios SCENARIOS = new Scenarios();
    private static final String FLASH = "\"flash\": { \"periodMs\": 500, \"onMs\": [[0, 100]], \"phaseMs\": 300 }";

    @Test
    void simultaneousHeadsAreOneLoadOfAllTheirCurrent() {
        Load load = loads("\"count\": 5, " + FLASH).get(0);

        assertThat(load.name()).isEqualTo("Lamp");
        assertThat(load.ratedCurrentA()).isEqualTo(10);
        assertThat(load.standbyCurrentA()).isEqualTo(0.5);
    }

    @Test
    void alternatingHeadsAreTwoHalvesHalfAPeriodApart() {
        List<Load> loads = loads("\"count\": 5, \"sync\": \"alternating\", " + FLASH);

        assertThat(loads).extracting(Load::name).containsExactly("Lamp 1 to 3 of 5", "Lamp 4 to 5 of 5");
        assertThat(loads).extracting(Load::ratedCurrentA).containsExactly(6.0, 4.0);
        assertThat(loads).extracting(load -> flashing(load).phaseMs()).containsExactly(300.0, 50.0);
        assertThat(loads).extracting(load -> flashing(load).clock().periodMs()).containsOnly(500.0);
    }

    @Test
    void headsOnOwnClocksKeepTheirDutyWithinOnePercentOfThePeriod() {
        List<Load> loads = loads("\"count\": 3, \"sync\": \"own clocks\", " + FLASH);

        assertThat(loads).extracting(Load::name).containsExactly("Lamp 1 of 3", "Lamp 2 of 3", "Lamp 3 of 3");
        assertThat(loads).extracting(load -> flashing(load).clock().periodMs()).containsExactly(495.0, 500.0, 505.0);
        assertThat(loads).extracting(load -> flashing(load).clock().name()).doesNotHaveDuplicates();
        assertThat(loads)
                .allSatisfy(load -> assertThat(load.pattern().onFraction()).isCloseTo(0.2, within(1e-12)));
    }

    @Test
    void severalWithoutAFlashAreOneLoad() {
        Load load = loads("\"count\": 3, \"duty\": { \"onS\": 1, \"everyS\": 4, \"betweenCurrentA\": 0.4 }")
                .get(0);

        assertThat(load.ratedCurrentA()).isEqualTo(6);
        assertThat(load.betweenCurrentA()).isCloseTo(1.2, within(1e-12));
    }

    @Test
    void aFeedIsTheWireOutAndBack() {
        // published worked value for AWG 10, 5 m each way, at 60 °C: 0.7584 V at 20 A
        assertThat(circuit("\"feed\": { \"awg\": \"10\", \"lengthM\": 5, \"wireC\": 60 },", "")
                                .feedOhm()
                        * 20)
                .isCloseTo(0.7584, within(0.0005));
        // 1/0 is gauge 0: 3 m each way, 20 °C: 0.3869 V at 200 A
        assertThat(circuit("\"feed\": { \"awg\": \"1/0\", \"lengthM\": 3, \"wireC\": 20 },", "")
                                .feedOhm()
                        * 200)
                .isCloseTo(0.3869, within(0.0005));
    }

    private static LoadPattern.Flashing flashing(Load load) {
        return (LoadPattern.Flashing) load.pattern();
    }

    private static List<Load> loads(String keys) {
        return circuit("", ", " + keys).loads();
    }

    private static Circuit circuit(String feed, String keys) {
        return SCENARIOS
                .read("text", """
                    { "format": 1, "title": "Loads",
                      "vehicle": { "name": "Truck", "battery": { "part": "battery-agm-92" },
                        "circuits": [{ "name": "Circuit", %s
                          "loads": [{ "name": "Lamp", "ratedCurrentA": 2, "standbyCurrentA": 0.1 %s }] }],
                        "starter": { "part": "starter-4-cylinder" } },
                      "scene": { "phases": [{ "name": "Watch", "engine": "off", "durationMin": 60, "airC": 15 }] } }
                    """.formatted(feed, keys))
                .vehicle()
                .circuits()
                .get(0);
    }
}
