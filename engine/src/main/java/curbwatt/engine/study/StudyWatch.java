package curbwatt.engine.study;

/** Looks on while a study runs, and can end it. Called by one thread at a time; it can't change an answer. */
public interface StudyWatch {

    /**
     * Some more is done.
     *
     * @param done how many are done
     * @param all how many there are
     */
    void done(int done, int all);

    /** Whether nobody wants the answers any more: the study ends with {@link StudyStoppedException}. */
    default boolean isStopped() {
        return false;
    }

    /** Looks on in silence. */
    static StudyWatch none() {
        return (done, all) -> {};
    }
}
