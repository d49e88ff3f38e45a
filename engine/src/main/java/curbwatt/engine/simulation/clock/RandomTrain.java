package curbwatt.engine.simulation.clock;

import curbwatt.engine.load.LoadPattern;

/** The edges of a load that is switched on at random instants; the pattern gives each by its index. */
final class RandomTrain implements EdgeTrain {

    private final LoadPattern.RandomDuty pattern;
    private long index;
    private long edgeNs;

    RandomTrain(LoadPattern.RandomDuty pattern) {
        this.pattern = pattern;
        edgeNs = pattern.edgeNs(0);
    }

    @Override
    public boolean isLit() {
        return index % 2 == 1;
    }

    @Override
    public long nextEdgeNs() {
        return edgeNs;
    }

    @Override
    public void advance() {
        index++;
        edgeNs = pattern.edgeNs(index);
    }
}
