package curbwatt.charts.wording;

/** Names of places that the user did not name. */
final class Places {

    /** What the engine calls the point where battery, alternator and feeds meet. */
    static final String NODE = "node";

    private Places() {}

    /** The user's name in quotation marks, or words for the node. */
    static String named(String subject) {
        return subject.equals(NODE) ? "the battery" : PlainText.quoted(subject);
    }
}
