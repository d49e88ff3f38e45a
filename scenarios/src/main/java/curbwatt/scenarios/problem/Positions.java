package curbwatt.scenarios.problem;

/** Where the parts of a document stand in its text. */
public interface Positions {

    /**
     * Returns where the value at a JSON pointer begins. What the document does not have stands where the object that
     * lacks it begins.
     */
    SourcePosition ofValue(String pointer);

    /** Returns where the key at a JSON pointer begins; where there is no key, as {@link #ofValue}. */
    SourcePosition ofKey(String pointer);

    /** Whether the document has a value at a JSON pointer, right or wrong. */
    boolean has(String pointer);
}
