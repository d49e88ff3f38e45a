package curbwatt.engine.simulation.record;

/** Hands each step to two recorders, as fine as either of them needs it. */
record BothRecorders(Recorder one, Recorder other) implements Recorder {

    @Override
    public void record(Step step) {
        one.record(step);
        other.record(step);
    }

    @Override
    public double nextLineS(double timeS) {
        return Math.min(one.nextLineS(timeS), other.nextLineS(timeS));
    }

    @Override
    public double edgesFromS(double timeS) {
        return Math.min(one.edgesFromS(timeS), other.edgesFromS(timeS));
    }

    @Override
    public boolean isWatching() {
        return one.isWatching() || other.isWatching();
    }
}
