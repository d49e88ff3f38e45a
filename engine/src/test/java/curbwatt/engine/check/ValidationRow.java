package curbwatt.engine.check;

import java.util.Comparator;

/**
 * One published value beside ours.
 *
 * @param testClass class of the test that checked it
 * @param testMethod method of that class
 * @param published the value from outside
 * @param oursValue our figure, in the unit of {@code published}
 */
record ValidationRow(String testClass, String testMethod, Published published, double oursValue) {

    /** By topic, then by test; rows of one test keep the order in which it published them. */
    static final Comparator<ValidationRow> ORDER = Comparator.comparing(
                    (ValidationRow row) -> row.published().topic())
            .thenComparing(ValidationRow::testClass)
            .thenComparing(ValidationRow::testMethod);
}
