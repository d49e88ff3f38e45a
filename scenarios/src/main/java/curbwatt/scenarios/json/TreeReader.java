package curbwatt.scenarios.json;

import curbwatt.scenarios.file.Place;
import curbwatt.scenarios.file.Setting;
import curbwatt.scenarios.problem.Problem;
import curbwatt.scenarios.problem.Quoted;
import curbwatt.scenarios.problem.SourcePosition;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.json.JsonReadFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Builds the tree of one document, notes where everything stands, and collects what a tree can't hold: keys that stand
 * twice, and numbers too large for a double. Used once.
 */
final class TreeReader {
    private static final JsonFactory FACTORY =
            JsonFactory.builder().enable(JsonReadFeature.ALLOW_JAVA_COMMENTS).build();
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final JsonParser parser;
    private final PositionIndex positions;
    private final List<Problem> problems = new ArrayList<>();
    private final List<Place> spoilt = new ArrayList<>();

    private TreeReader(JsonParser parser, PositionIndex positions) {
        this.parser = parser;
        this.positions = positions;
    }

    /**
     * A document as read.
     *
     * @param root its top value
     * @param positions where everything stands
     * @param problems what was left out of the tree, and why
     * @param spoilt where something was left out
     */
    record Tree(JsonNode root, PositionIndex positions, List<Problem> problems, List<Place> spoilt) {}

    /** Reads a text that {@link SyntaxCheck} has passed. */
    static Tree read(SourceText source) {
        try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), source.text())) {
            TreeReader reader = new TreeReader(parser, new PositionIndex(source.name()));
            JsonNode root = reader.value(parser.nextToken(), Place.ROOT);
            return new Tree(root, reader.positions, reader.problems, reader.spoilt);
        }
    }

    /**
     * Reads the value of a setting for its place in a document. Anything that is no JSON is the text that it is: a text
     * needs no quotes on a command line.
     */
    static JsonNode fragment(Setting setting, Place place, PositionIndex positions) {
        positions.noteSetting(place, setting.toString());
        try (JsonParser parser = FACTORY.createParser(ObjectReadContext.empty(), setting.value())) {
            TreeReader reader = new TreeReader(parser, positions);
            JsonNode value = reader.value(parser.nextToken(), place);
            if (parser.nextToken() == null && reader.problems.isEmpty()) {
                return value;
            }
        } catch (JacksonException e) {
            // a text without quotes
        }
        positions.forget(place);
        positions.noteSetting(place, setting.toString());
        positions.noteValue(place, new TextPosition(0, 0));
        return NODES.stringNode(setting.value());
    }

    private JsonNode value(JsonToken token, Place place) {
        positions.noteValue(place, here());
        return switch (token) {
            case START_OBJECT -> object(place);
            case START_ARRAY -> array(place);
            case VALUE_STRING -> NODES.stringNode(parser.getString());
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number(place);
            case VALUE_TRUE -> NODES.booleanNode(true);
            case VALUE_FALSE -> NODES.booleanNode(false);
            default -> NODES.nullNode();
        };
    }

    private ObjectNode object(Place place) {
        ObjectNode node = NODES.objectNode();
        while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
            String key = parser.currentName();
            Place keyPlace = place.key(key);
            TextPosition at = here();
            if (positions.has(keyPlace.pointer())) {
                problems.add(twice(keyPlace, at));
                parser.nextToken();
                parser.skipChildren();
            } else {
                positions.noteKey(keyPlace, at);
                JsonNode value = value(parser.nextToken(), keyPlace);
                if (!spoilt.contains(keyPlace)) {
                    node.set(key, value);
                }
            }
        }
        return node;
    }

    private ArrayNode array(Place place) {
        ArrayNode node = NODES.arrayNode();
        int index = 0;
        for (JsonToken token = parser.nextToken(); token != JsonToken.END_ARRAY; token = parser.nextToken()) {
            node.add(value(token, place.item(index)));
            index++;
        }
        return node;
    }

    private JsonNode number(Place place) {
        String spelling = parser.getString();
        positions.noteNumber(place, spelling);
        double value = Double.parseDouble(spelling);
        if (Double.isInfinite(value)) {
            problems.add(new Problem(
                    Problem.Severity.ERROR,
                    positions.ofValue(place.pointer()),
                    place.name() + " is " + spelling + ", which is beyond any number that can be computed with.",
                    "Write a finite number."));
            spoilt.add(place);
            return NODES.nullNode();
        }
        boolean whole = spelling.matches("-?[0-9]{1,9}");
        return whole ? NODES.numberNode(Integer.parseInt(spelling)) : NODES.numberNode(value);
    }

    private Problem twice(Place place, TextPosition at) {
        SourcePosition first = positions.ofKey(place.pointer());
        return new Problem(
                Problem.Severity.ERROR,
                new SourcePosition(first.file(), at.line(), at.column(), first.path()),
                "The key " + Quoted.name(place.name()) + " stands twice in one object, first in line " + first.line()
                        + ".",
                "Leave one of them.");
    }

    private TextPosition here() {
        TokenStreamLocation location = parser.currentTokenLocation();
        return new TextPosition(location.getLineNr(), location.getColumnNr());
    }
}
