package curbwatt.charts.wording;

/** Names of places that the user did not name. */
final class Places {

    /** What the engine calls the point where battery, alternator and feeds meet. */
    static final String NODE = "node";

    /** What it calls the point where auxiliary battery, link and feeds meet. */
    static final String EQUIPMENT_NODE = "equipment node";

    private Places() {}

    /** The user's name in quotation marks, or words for the node. */
    static String named(String subject) {
        return switch (subject) {
            case NODE -> "the battery";
            case EQUIPMENT_NODE -> "the auxiliary battery";
            default -> PlainText.quoted(subject);
        };
    }
}
