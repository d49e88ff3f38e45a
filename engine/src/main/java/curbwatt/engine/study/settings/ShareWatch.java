package curbwatt.engine.study.settings;

import curbwatt.engine.study.StudyWatch;

/**
 * Tells of a part of the work as a share of the whole.
 *
 * @param whole hears of it
 * @param fromFraction share that is done when the part begins
 * @param toFraction share that is done when it ends
 */
record ShareWatch(StudyWatch whole, double fromFraction, double toFraction) implements StudyWatch {

    private static final int ALL = 10000;

    @Override
    public void done(int done, int all) {
        whole.done((int) (ALL * (fromFraction + (toFraction - fromFraction) * done / all)), ALL);
    }

    @Override
    public boolean isStopped() {
        return whole.isStopped();
    }
}
