package curbwatt.engine.verdict;

/**
 * Something that a reader of the figures must know.
 *
 * @param kind what it is
 * @param subject the part or phase it concerns
 */
public record Doubt(Kind kind, String subject) {

    /** The kinds of doubt. */
    public enum Kind {
        /** The engine speed lies where the alternator's output curve is not to be trusted [phase]. */
        ALTERNATOR_NEAR_CUT_IN,
        /** The battery's electrolyte may have frozen [battery]. */
        ELECTROLYTE_MAY_FREEZE,
        /** The voltage came within the sensor's usual error of a trip level without tripping [cutoff]. */
        NEAR_TRIP,
        /** The cutoff opened and closed more than twice in an hour [cutoff]. */
        CUTOFF_CHATTERS,
        /** A circuit or the node had no operating point [circuit or node]. */
        VOLTAGE_COLLAPSED,
        /** The battery was colder or hotter than its model is meant for, −20 … 50 °C [battery]. */
        TEMPERATURE_OUT_OF_MODEL,
        /** The battery was discharged below half: its later life is shortened [battery]. */
        DEEP_DISCHARGE
    }
}
