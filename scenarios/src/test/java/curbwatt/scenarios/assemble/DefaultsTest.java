package curbwatt.scenarios.assemble;

import static org.assertj.core.api.Assertions.assertThat;

import curbwatt.scenarios.json.SchemaObjects;
import java.util.List;
import java.util.stream.Collectors;
import org.assertj.core.util.DoubleComparator;
import org.junit.jupiter.api.Test;

/** The defaults that the schema promises are those that are put in. */
class DefaultsTest {
    /** The schema rounds one default, the published 16/24, to three digits. */
    private static final DoubleComparator CLOSE = new DoubleComparator(5e-4);

    private static final Scenarios SCENARIOS = new Scenarios();

    @Test
    void writingTheDefaultsOutChangesNothing() {
        ReadyScenario silent = SCENARIOS.read("silent", scenario(false));
        ReadyScenario explicit = SCENARIOS.read("explicit", scenario(true));

        assertThat(explicit)
                .usingRecursiveComparison()
                .withComparatorForType(CLOSE, Double.class)
                .ignoringFields("source", "assumptions", "warnings")
                .isEqualTo(silent);
        assertThat(explicit.assumptions()).hasSizeLessThan(silent.assumptions().size());
    }

    private static String scenario(boolean explicit) {
        return """
            { "format": 1, "title": "Defaults",
              "vehicle": {
                "name": "Truck",
                "battery": { "chemistry": "flooded", "c20Ah": 70 %s },
                "auxiliary": { "battery": { "chemistry": "agm", "c20Ah": 70 %s },
                  "link": { "kind": "charge relay", "resistanceMilliohm": 2, "closeV": 13.3, "openV": 12.8 %s } },
                "alternator": { "idleA": 70, "ratedA": 140 %s },
                "circuits": [{ "name": "Lights" %s, "fuse": { "ratingA": 20 %s },
                  "feed": { "awg": "8", "lengthM": 3 %s },
                  "loads": [
                    { "name": "Steady", "ratedCurrentA": 2 %s },
                    { "name": "Silent", "ratedCurrentA": 2, "dropOutV": 10 %s },
                    { "name": "Flash", "ratedCurrentA": 2, "flash": { "periodMs": 500, "onMs": [[0, 100]] %s } },
                    { "name": "Duty", "ratedCurrentA": 2, "duty": { "onS": 5, "everyS": 20 %s } },
                    { "name": "Random", "ratedCurrentA": 2,
                      "randomDuty": { "onS": 5, "everyS": 20, "seed": 1 %s } }
                  ] }],
                "cutoffs": [{ "name": "Cutoff", "tripV": 11.8, "disconnects": ["Lights"],
                  "reclose": { "when": "above voltage", "aboveV": 13 %s } %s }],
                "idleControl": { "highIdleRpm": 1100, "raiseBelowV": 12.8, "releaseAboveV": 13.6 %s },
                "automaticStart": { "startBelowV": 11.9, "stopAfterMin": 30, "runRpm": 900 %s },
                "engine": { "fuel": "diesel", "idleLitresPerHour": 1.7, "atRpm": 700 %s },
                "starter": { "crankingA": 150 %s }
              },
              "scene": { "start": { "batteryC": 15 %s },
                "phases": [{ "name": "Watch", "engine": "off", "durationMin": 60, "airC": 15 %s }] },
              "requirements": { "restartMarginV": 0.3 },
              "trace": { %s } }
            """.formatted((Object[]) List.of(
                        defaults(explicit, "battery"),
                        defaults(explicit, "battery"),
                        defaults(explicit, "link", "startDelayS", "stopDelayS"),
                        defaults(explicit, "alternator"),
                        defaults(explicit, "circuit"),
                        defaults(explicit, "fuse"),
                        defaults(explicit, "feed"),
                        defaults(explicit, "load", "sync", "dropOutV"),
                        defaults(explicit, "load", "sync", "dropOutV", "returnV"),
                        defaults(explicit, "flash"),
                        defaults(explicit, "duty"),
                        defaults(explicit, "randomDuty"),
                        defaults(explicit, "reclose"),
                        defaults(explicit, "cutoff"),
                        defaults(explicit, "idleControl"),
                        defaults(explicit, "automaticStart"),
                        defaults(explicit, "engine"),
                        defaults(explicit, "starter"),
                        defaults(explicit, "start"),
                        defaults(explicit, "phase"),
                        defaults(explicit, "trace").replaceFirst("^,", ""))
                .toArray(String[]::new));
    }

    private static String defaults(boolean explicit, String object, String... but) {
        return SchemaObjects.all().get(object).path("properties").properties().stream()
                .filter(key -> explicit
                        && key.getValue().has("default")
                        && !List.of(but).contains(key.getKey()))
                .map(key -> ", \"" + key.getKey() + "\": " + key.getValue().path("default"))
                .collect(Collectors.joining());
    }
}
