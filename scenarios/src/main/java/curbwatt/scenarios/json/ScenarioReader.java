package curbwatt.scenarios.json;

import curbwatt.scenarios.file.Place;
import curbwatt.scenarios.file.ScenarioFile;
import curbwatt.scenarios.file.Setting;
import curbwatt.scenarios.problem.Positions;
import curbwatt.scenarios.problem.Problem;
import curbwatt.scenarios.problem.ScenarioException;
import curbwatt.scenarios.problem.SourcePosition;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonPointer;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Reads scenario texts. Can be used any number of times. */
public final class ScenarioReader {
    private final SchemaCheck schema = new SchemaCheck();

    /**
     * A text as read.
     *
     * @param file what is left of it after everything refused was taken out
     * @param positions where everything stands
     * @param problems what was refused
     * @param spoilt places where something was refused, or is missing because its key was misspelt
     * @param values what the text and the settings say: values by path, in their order
     */
    public record Reading(
            ScenarioFile file,
            Positions positions,
            List<Problem> problems,
            List<Place> spoilt,
            Map<String, String> values) {
        /** Copies the lists. */
        public Reading {
            problems = List.copyOf(problems);
            spoilt = List.copyOf(spoilt);
        }
    }

    /**
     * Reads a text.
     *
     * @throws ScenarioException if it is no JSON object, so that there is nothing to look at
     */
    public Reading read(SourceText source) {
        return read(source, List.of());
    }

    /**
     * Reads a text in which some values are set anew before anything is looked at.
     *
     * @param settings one after the other
     * @throws ScenarioException if it is no JSON object, or if a setting's place is not to be found
     */
    public Reading read(SourceText source, List<Setting> settings) {
        SyntaxCheck.of(source).ifPresent(problem -> {
            throw new ScenarioException(List.of(problem));
        });
        TreeReader.Tree tree = tree(source);
        List<Problem> misplaced = settings.stream()
                .flatMap(setting -> TreeChange.apply(tree, setting).stream())
                .toList();
        if (!misplaced.isEmpty()) {
            throw new ScenarioException(misplaced);
        }
        SchemaCheck.Refusal refusal = schema.check(tree);
        List<Problem> problems = new ArrayList<>(tree.problems());
        problems.addAll(refusal.problems());
        if (!tree.root().isObject()) {
            throw new ScenarioException(problems);
        }
        Map<String, String> values = FlatTree.of(tree.root());
        refusal.spoilt().stream()
                .sorted((a, b) -> b.pointer().compareTo(a.pointer()))
                .forEach(place -> blank(tree.root(), place));
        markPlaces(tree.root(), Place.ROOT);
        dropBlanks(tree.root());
        return new Reading(
                Json.MAPPER.treeToValue(tree.root(), ScenarioFile.class),
                tree.positions(),
                problems,
                refusal.spoilt(),
                values);
    }

    /**
     * Returns the same document without comments, for programs that know none. What is wrong with its figures stays.
     *
     * @throws ScenarioException if the text is no JSON
     */
    public String plain(SourceText source) {
        SyntaxCheck.of(source).ifPresent(problem -> {
            throw new ScenarioException(List.of(problem));
        });
        return tree(source).root().toString();
    }

    /** Returns the JSON Schema of scenario files. */
    public static String schemaText() {
        return SchemaCheck.text();
    }

    private static TreeReader.Tree tree(SourceText source) {
        try {
            return TreeReader.read(source);
        } catch (JacksonException e) {
            TokenStreamLocation at = e.getLocation();
            int line = at == null ? 0 : Math.max(0, at.getLineNr());
            int column = at == null ? 0 : Math.max(0, at.getColumnNr());
            throw new ScenarioException(List.of(new Problem(
                    Problem.Severity.ERROR,
                    new SourcePosition(source.name(), line, column, ""),
                    "The text can't be read any further from here.",
                    "Is a number or a text extremely long?")));
        }
    }

    /** Tells every object where it stands, before entries are taken out of lists and the counting shifts. */
    static void markPlaces(JsonNode node, Place place) {
        if (node instanceof ObjectNode object) {
            for (String key : List.copyOf(object.propertyNames())) {
                markPlaces(object.get(key), place.key(key));
            }
            object.put("place", place.pointer());
        } else if (node instanceof ArrayNode list) {
            for (int i = 0; i < list.size(); i++) {
                markPlaces(list.get(i), place.item(i));
            }
        }
    }

    private static void blank(JsonNode root, Place place) {
        JsonNode parent = root.at(JsonPointer.compile(place.parent().pointer()));
        if (parent instanceof ObjectNode object && !place.equals(Place.ROOT)) {
            object.remove(place.name());
        } else if (parent instanceof ArrayNode list) {
            int index = Integer.parseInt(place.name());
            if (index < list.size()) {
                list.setNull(index);
            }
        }
    }

    private static void dropBlanks(JsonNode node) {
        if (node instanceof ArrayNode list) {
            for (int i = list.size() - 1; i >= 0; i--) {
                if (list.get(i).isNull()) {
                    list.remove(i);
                }
            }
        }
        node.forEach(ScenarioReader::dropBlanks);
    }
}
