package curbwatt.engine.simulation.envelope;

/**
 * Over which clocks a long step averages, and what it may show the devices.
 *
 * @param longestPeriodS slowest clock that is averaged over (s); edges of slower ones end a step
 * @param longestS longest step (s)
 * @param mayWalk whether devices may be shown the waveform of a step whose levels lie within it
 * @param mostSwingV furthest that a battery's state may swing within a step, as seen in its node's voltage (V)
 */
record Reach(double longestPeriodS, double longestS, boolean mayWalk, double mostSwingV) {

    /**
     * Over flashes: clocks up to a tenth of the batteries' fastest time constant, for up to a quarter of their slowest one. What
     * the state swings by within a turn is known well enough for any device.
     */
    static Reach near() {
        return new Reach(12.5, 7200, true, Double.POSITIVE_INFINITY);
    }

    /**
     * Over a radio's calls too, half of that time constant apart. What the state swings by is known to a tenth then, so that
     * nothing may hang on it; and it is left out of the lowest and highest voltages, which may be off by 2 mV.
     */
    static Reach far() {
        return new Reach(65, 600, false, 1.5e-3);
    }
}
