package curbwatt.engine.vehicle;

import curbwatt.engine.powertrain.CrankingLimit;
import curbwatt.engine.powertrain.Starter;
import java.util.Objects;

/**
 * What a start takes and what is asked of the battery meanwhile.
 *
 * @param starter current drawn
 * @param limit lowest battery voltage at which the engine is taken to start
 * @param loadsStayOn whether the connected equipment stays on while cranking, all of it lit at once; otherwise it is
 *     switched off first
 */
public record StartingSystem(Starter starter, CrankingLimit limit, boolean loadsStayOn) {

    /** Refuses missing parts. */
    public StartingSystem {
        Objects.requireNonNull(starter, "starter");
        Objects.requireNonNull(limit, "limit");
    }
}
