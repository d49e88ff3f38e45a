package curbwatt.scenarios.json;

import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import com.networknt.schema.path.NodePath;
import curbwatt.scenarios.file.Place;
import curbwatt.scenarios.problem.Nearest;
import curbwatt.scenarios.problem.Problem;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import tools.jackson.databind.JsonNode;

/** Holds a document against the schema, the one that editors use, and takes out of it what the schema refuses. */
final class SchemaCheck {
    private static final String RESOURCE = "/curbwatt/schema/scenario.schema.json";

    private final Schema schema;
    private final JsonNode tree;

    SchemaCheck() {
        this.tree = Json.MAPPER.readTree(text());
        this.schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(tree);
    }

    /** Returns the schema as it is shipped. */
    static String text() {
        try (InputStream in = SchemaCheck.class.getResourceAsStream(RESOURCE)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * What the schema refuses.
     *
     * @param problems one for each mistake
     * @param spoilt places that a later rule must not complain of: refused values, and keys that were meant by misspelt
     * ones
     */
    record Refusal(List<Problem> problems, List<Place> spoilt) {}

    /** Returns what the schema refuses in the tree; places already spoilt are passed over. */
    Refusal check(TreeReader.Tree document) {
        List<Error> errors = schema.validate(document.root());
        List<Place> spoilt = new ArrayList<>();
        Set<Place> silent = new HashSet<>(document.spoilt());
        for (Error error : errors) {
            if (isUnknownKey(error)) {
                silent.addAll(meant(error));
            }
        }
        List<Problem> problems = new ArrayList<>();
        for (Error error : errors) {
            Place place = concerned(error);
            if (!silent.contains(place)) {
                problems.add(SchemaSentence.of(error, place, object(error), document.positions()));
                spoilt.add(place);
            }
        }
        spoilt.addAll(silent);
        return new Refusal(problems, spoilt);
    }

    /** The schema object that holds the keyword that an error is about. */
    private JsonNode object(Error error) {
        String pointer = error.getSchemaLocation().getFragment().toString();
        return tree.at(pointer.substring(0, pointer.lastIndexOf('/')));
    }

    /** The place that an error is about: for a key that is missing or unknown, the key's own. */
    private static Place concerned(Error error) {
        Place place = place(error.getInstanceLocation());
        return error.getProperty() == null ? place : place.key(error.getProperty());
    }

    private static Place place(NodePath path) {
        Place place = Place.ROOT;
        for (int i = 0; i < path.getNameCount(); i++) {
            Object element = path.getElement(i);
            place = element instanceof Integer index ? place.item(index) : place.key(String.valueOf(element));
        }
        return place;
    }

    private static boolean isUnknownKey(Error error) {
        return error.getKeyword().equals("additionalProperties");
    }

    /** The key that a misspelt one most likely stands for: not to be called missing as well. */
    private List<Place> meant(Error error) {
        Place object = place(error.getInstanceLocation());
        return Nearest.to(error.getProperty(), SchemaSentence.keys(object(error))).stream()
                .limit(1)
                .map(object::key)
                .toList();
    }
}
