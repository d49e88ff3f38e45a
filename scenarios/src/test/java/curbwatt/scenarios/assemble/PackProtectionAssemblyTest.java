package curbwatt.scenarios.assemble;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.engine.protection.PackProtection;
import curbwatt.engine.vehicle.AuxiliaryBattery;
import org.junit.jupiter.api.Test;

class PackProtectionAssemblyTest {

    private static ReadyScenario with(String battery) {
        return new Scenarios().read("pack.json", """
                        { "format": 1, "title": "Pack",
                          "vehicle": { "name": "Truck", "battery": { "part": "battery-agm-92" },
                            "auxiliary": { "battery": { %s }, "link": { "kind": "solid", "resistanceMilliohm": 3 } },
                            "starter": { "part": "starter-8-cylinder" },
                            "circuits": [{ "name": "Lights", "loads": [
                                { "name": "Steady", "ratedCurrentA": 4, "ratedVoltageV": 12, "voltageExponent": 0 }] }] },
                          "scene": { "phases": [
                            { "name": "Watch", "engine": "off", "durationMin": 10, "airC": 20 }] } }
                        """.formatted(battery));
    }

    private static AuxiliaryBattery auxiliary(ReadyScenario scenario) {
        return scenario.vehicle().auxiliary().orElseThrow();
    }

    @Test
    void anIronPhosphatePackHasTheUsualProtectionForItsRating() {
        ReadyScenario scenario = with("\"part\": \"battery-lfp-100\", \"continuousA\": 60");
        assertThat(auxiliary(scenario).protection()).contains(PackProtection.usual(100, 60));
        assertThat(scenario.assumptions()).noneMatch(sentence -> sentence.contains("continuous current"));
    }

    @Test
    void withoutARatingItIsTheCapacityInOneHourAndSaidSo() {
        ReadyScenario scenario = with("\"part\": \"battery-lfp-100\"");
        assertThat(auxiliary(scenario).protection()).contains(PackProtection.usual(100, 100));
        assertThat(scenario.assumptions()).anyMatch(sentence -> sentence.contains("continuous current"));
    }

    @Test
    void leadHasNone() {
        assertThat(auxiliary(with("\"part\": \"battery-agm-92\"")).protection()).isEmpty();
    }
}
