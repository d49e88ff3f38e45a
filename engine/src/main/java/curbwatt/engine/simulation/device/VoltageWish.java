package curbwatt.engine.simulation.device;

import curbwatt.engine.simulation.clock.LevelCount;
import curbwatt.engine.simulation.network.SenseTap;

/**
 * What a device of the engine waits for at present, if that is a voltage alone.
 *
 * @param device the device's settings
 * @param tap where it senses
 * @param below whether it waits for a voltage below the level; otherwise at or above
 * @param levelV level (V)
 * @param countedS how long the voltage has been there (s)
 * @param delayS how long it has to be (s)
 */
public record VoltageWish(Record device, SenseTap tap, boolean below, double levelV, double countedS, double delayS)
        implements LevelCount {

    @Override
    public boolean isBeyond(double voltageV) {
        return below ? voltageV < levelV : voltageV >= levelV;
    }
}
