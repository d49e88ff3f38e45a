package curbwatt.scenarios.json;

/** Ends the walk over a text that is no JSON; never leaves the package. */
final class NotJson extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final int offset;
    private final String remedy;

    /**
     * Says what is wrong.
     *
     * @param offset where, in characters from 0
     * @param message what was found
     * @param remedy what would be right
     */
    NotJson(int offset, String message, String remedy) {
        super(message);
        this.offset = offset;
        this.remedy = remedy;
    }

    /** Where, in characters from 0. */
    int offset() {
        return offset;
    }

    /** What would be right. */
    String remedy() {
        return remedy;
    }
}
