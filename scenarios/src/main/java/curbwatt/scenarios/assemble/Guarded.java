package curbwatt.scenarios.assemble;

import curbwatt.scenarios.check.Findings;
import curbwatt.scenarios.file.Place;
import curbwatt.scenarios.problem.ScenarioException;
import java.util.function.Supplier;

/**
 * Building under guard: what the engine still refuses, although every rule let it pass, becomes a problem with a place.
 *
 * @param findings told of it
 */
record Guarded(Findings findings) {

    /**
     * Builds something from the entry at a place.
     *
     * @throws ScenarioException if the engine refuses it
     */
    <T> T build(Place place, Supplier<T> building) {
        try {
            return building.get();
        } catch (IllegalArgumentException e) {
            String message = String.valueOf(e.getMessage());
            Place key = place.key(message.split(" ", 2)[0]);
            findings.error(
                    findings.isWritten(key) ? key : place,
                    "Here the figures don't go together: " + message + ".",
                    "Change one of them.");
            throw new ScenarioException(findings.inOrder());
        }
    }
}
