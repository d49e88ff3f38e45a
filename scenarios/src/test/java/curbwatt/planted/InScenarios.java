package curbwatt.planted;

import com.networknt.schema.SchemaRegistry;
import tools.jackson.databind.JsonNode;

/** What scenarios may do in one package only. */
public final class InScenarios {

    private InScenarios() {}

    /** Binds JSON. */
    public record Binds(JsonNode node) {}

    /** Validates JSON. */
    public record Validates(SchemaRegistry schemas) {}
}
