package curbwatt.scenarios.assemble;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;

/**
 * A scenario together with what its file says, for those who lay several side by side.
 *
 * @param ready the scenario
 * @param values what the file says, and what was set beside it: values by path, in the file's order
 */
public record ScenarioInput(ReadyScenario ready, Map<String, String> values) {

    /** Copies the map. */
    public ScenarioInput {
        Objects.requireNonNull(ready, "ready");
        values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
    }
}
