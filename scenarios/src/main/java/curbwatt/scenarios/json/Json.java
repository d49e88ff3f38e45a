package curbwatt.scenarios.json;

import tools.jackson.databind.ObjectMapper;

/** The one reader of JSON in this package: what it learns about an entry's class holds for catalogue and scenario alike. */
final class Json {
    /** As it comes; never changes. Each further one would look through every class anew, which takes longer than a file. */
    static final ObjectMapper MAPPER = new ObjectMapper();

    private Json() {}
}
