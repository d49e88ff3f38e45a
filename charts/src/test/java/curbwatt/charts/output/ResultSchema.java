package curbwatt.charts.output;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The schema that ships with the pages, for documents of runs and of studies. */
public final class ResultSchema {

    private static final Path SCHEMA = Path.of("..", "docs", "result.schema.json");

    private ResultSchema() {}

    /** What is wrong with a document; empty: it fits. */
    public static List<String> faults(String json) throws IOException {
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(SCHEMA));
        return schema.validate(json, InputFormat.JSON).stream()
                .map(fault -> fault.getInstanceLocation() + ": " + fault.getMessage())
                .toList();
    }

    /** The document in a file is of a study, fits its part of the schema, and would not without its last key. */
    public static void assertFits(String study, Path file) throws IOException {
        String json = Files.readString(file);
        assertThat(json).contains("\"study\": \"" + study + "\"");
        assertThat(faults(json)).as("%s", file).isEmpty();
        assertThat(faults(json.replaceFirst("\"format\"", "\"form\""))).isNotEmpty();
    }
}
