package curbwatt.engine.study;

/** A study was ended by its {@link StudyWatch} before it had all its answers. */
public final class StudyStoppedException extends RuntimeException {
    private static final long serialVersionUID = 1;

    /** The study was stopped. */
    public StudyStoppedException() {
        super("the study was stopped");
    }
}
