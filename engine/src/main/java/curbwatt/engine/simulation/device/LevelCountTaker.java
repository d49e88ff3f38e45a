package curbwatt.engine.simulation.device;

import curbwatt.engine.simulation.clock.LevelCount;
import curbwatt.engine.simulation.network.SenseTap;

/** Somebody who is told of counts. */
public interface LevelCountTaker {

    /**
     * Takes a count.
     *
     * @param tap where its voltage is taken
     * @param errorV what the device adds to that (V)
     */
    void take(LevelCount count, SenseTap tap, double errorV);
}
