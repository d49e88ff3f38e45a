package curbwatt.charts.output;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import curbwatt.charts.run.SampleRun;
import curbwatt.engine.event.EventKind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ResultJsonTest {

    private static final Path DOCS = Path.of("..", "docs");

    @ParameterizedTest
    @EnumSource
    void fitsItsSchema(SampleRun run) throws IOException {
        assertThat(schema().validate(ResultJson.of(run.story()), InputFormat.JSON))
                .isEmpty();
    }

    @Test
    void aStudyThatNobodyKnowsDoesNotFit() throws IOException {
        assertThat(ResultSchema.faults("{\"study\": \"weather\", \"format\": 1}"))
                .isNotEmpty();
    }

    @Test
    void theSchemaSeesWhatIsMissingOrUnknown() throws IOException {
        String json = ResultJson.of(SampleRun.HOLDS.story());
        assertThat(schema().validate(json.replace("\"verdict\"", "\"judgement\""), InputFormat.JSON))
                .isNotEmpty();
        assertThat(schema().validate(json.replace("\"version\": 1", "\"version\": 2"), InputFormat.JSON))
                .isNotEmpty();
    }

    @Test
    void saysTheVerdictWithFigureAndLimit() {
        assertThat(ResultJson.of(SampleRun.CUT_OFF_EARLY.story()))
                .contains("\"met\": false")
                .contains("\"sentence\": \"Cut off too early: 'Scene power' opens after")
                .contains("\"circuits\": [\"Radios, desk\", \"Scene lights\"]")
                .contains("\"limit\": 60,\n        \"unit\": \"min\",\n        \"cause\": \"Scene power\"")
                .contains("\"kind\": \"cutoffTripped\"");
    }

    @Test
    void aBatteryThatCannotCrankHasNoFigure() {
        assertThat(ResultJson.of(SampleRun.STRANDS.story()))
                .contains("\"figure\": null")
                .contains("\"lowestV\": null")
                .doesNotContain("Infinity");
    }

    @ParameterizedTest
    @EnumSource
    void schemaAndPageNameEveryEvent(EventKind kind) throws IOException {
        String word = ResultJson.camelCase(kind);
        assertThat(Files.readString(DOCS.resolve("events.md"))).contains("`" + word + "`");
        assertThat(Files.readString(DOCS.resolve("result.schema.json"))).contains('"' + word + '"');
    }

    private static Schema schema() throws IOException {
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(DOCS.resolve("result.schema.json")));
    }
}
