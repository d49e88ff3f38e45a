package curbwatt.charts.report;

import curbwatt.scenarios.assemble.ReadyScenario;
import curbwatt.scenarios.assemble.Scenarios;

/** A closure with steady loads and an idling engine, priced, for tests of studies. */
public final class Closure {

    /** The scenario file. */
    public static final String TEXT = """
            {
              "format": 1,
              "title": "A steady closure",
              "vehicle": {
                "name": "Incident truck 7",
                "battery": { "part": "battery-agm-92" },
                "alternator": { "part": "alternator-120", "setPointV": 14.2 },
                "circuits": [
                  { "name": "Lights", "loads": [{ "name": "Scene light", "ratedCurrentA": 34, "stages": ["warning"] }] },
                  { "name": "Radios", "loads": [{ "name": "Radio", "ratedCurrentA": 6, "stages": ["warning"] }] },
                  { "name": "Chassis", "loads": [{ "name": "Engine", "ratedCurrentA": 8, "stages": ["engine"] }] }
                ],
                "cutoffs": [
                  { "name": "Cutoff", "filterS": 1, "tripV": 11.8, "tripDelayS": 60, "disconnects": ["Lights", "Radios"] }
                ],
                "starter": { "part": "starter-8-cylinder" },
                "engine": { "fuel": "diesel", "idleLitresPerHour": 1.7, "atRpm": 700 }
              },
              "scene": {
                "start": { "chargePercent": 95 },
                "phases": [
                  { "name": "Drive out", "engine": "driving", "durationMin": 20, "airC": 15, "engineRpm": 1900, "stages": ["engine"] },
                  { "name": "Closure", "engine": "idling", "durationMin": 120, "airC": 15, "engineRpm": 650,
                    "stages": ["engine", "warning"] }
                ]
              },
              "requirements": { "hold": [{ "circuits": ["Lights", "Radios"], "forMin": 140 }], "restartMarginV": 0.3 },
              "studies": {
                "idle": {
                  "scenesPerYear": 120, "engineStages": ["engine"], "currency": "marks", "fuelPricePerLitre": 1.6,
                  "wearPricePerHour": 2, "idleControlPrice": 350, "automaticStartPrice": 1200
                }
              }
            }
            """;

    private Closure() {}

    static ReadyScenario ready() {
        return new Scenarios().read("closure.json", TEXT);
    }
}
