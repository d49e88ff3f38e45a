package curbwatt.scenarios.json;

import com.networknt.schema.Error;
import curbwatt.scenarios.file.KeyUnit;
import curbwatt.scenarios.file.Place;
import curbwatt.scenarios.problem.Nearest;
import curbwatt.scenarios.problem.Problem;
import curbwatt.scenarios.problem.Quoted;
import curbwatt.scenarios.problem.SourcePosition;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;

/**
 * Our sentence on a value that the schema refuses, made from the keyword, the value and the schema, never from the
 * validator's own wording.
 *
 * @param place what it is about
 * @param found the value
 * @param schema the schema object that refuses it
 * @param positions where everything stands, and how numbers were spelt
 */
record SchemaSentence(Place place, JsonNode found, JsonNode schema, PositionIndex positions) {

    /**
     * What is wrong and what would be right.
     *
     * @param message what was found
     * @param remedy what is allowed
     */
    private record Sentence(String message, String remedy) {}

    /** Returns the problem that an error stands for. */
    static Problem of(Error error, Place place, JsonNode schema, PositionIndex positions) {
        SchemaSentence about = new SchemaSentence(place, error.getInstanceNode(), schema, positions);
        Sentence sentence = about.sentence(error.getKeyword());
        SourcePosition position = error.getKeyword().equals("additionalProperties")
                ? positions.ofKey(place.pointer())
                : positions.ofValue(place.pointer());
        return new Problem(Problem.Severity.ERROR, position, sentence.message(), sentence.remedy());
    }

    /** Returns the keys that an object may have, in the schema's order. */
    static List<String> keys(JsonNode schema) {
        return new ArrayList<>(schema.path("properties").propertyNames());
    }

    private Sentence sentence(String keyword) {
        String subject = subject();
        return switch (keyword) {
            case "required" ->
                new Sentence(
                        "The key " + Quoted.name(place.name()) + " is missing" + within() + ".",
                        "Add it: " + missing());
            case "additionalProperties" ->
                new Sentence(
                        "The key " + Quoted.name(place.name()) + " is not known" + within() + ".",
                        Quoted.didYouMean(Nearest.to(place.name(), keys(schema))) + "Known here: "
                                + Quoted.list(keys(schema)) + ".");
            case "type" -> type(subject);
            case "minimum", "maximum" ->
                new Sentence(subject + " is " + foundText() + ".", "Allowed is " + range(schema) + ".");
            case "enum" -> choice(subject);
            case "const" ->
                new Sentence(subject + " is " + foundText() + ".", "The only value is " + schema.path("const") + ".");
            case "minLength" -> new Sentence(subject + " is empty.", "Write something between the quotes.");
            case "maxLength" ->
                new Sentence(
                        subject + " has " + found.stringValue().length() + " characters.",
                        "Allowed are " + schema.path("maxLength") + " at most.");
            case "minItems", "maxItems" -> length(subject);
            default ->
                new Sentence(
                        subject + " is not allowed here.",
                        schema.path("description").asString(""));
        };
    }

    private Sentence type(String subject) {
        String wanted = schema.path("type").stringValue("");
        if (found.isNull()) {
            return new Sentence(
                    subject + " is null, which says nothing.", "Leave the key out, or give " + wanted(wanted) + ".");
        }
        if (found.isString() && isNumber(wanted)) {
            String inside = found.stringValue().strip();
            return new Sentence(
                    subject + " is the text " + Quoted.name(inside) + "; " + wanted(wanted) + " is expected.",
                    inside.matches("-?[0-9]+([.][0-9]+)?")
                            ? "Drop the quotes: " + inside + "."
                            : "Write a number, without quotes.");
        }
        if (found.isNumber() && wanted.equals("string")) {
            return new Sentence(
                    subject + " is the number " + foundText() + "; a text is expected.",
                    "Put it in quotes: \"" + foundText() + "\".");
        }
        if (found.isNumber() && wanted.equals("integer")) {
            return new Sentence(subject + " is " + foundText() + ".", "Write a whole number.");
        }
        return new Sentence(
                subject + " is " + kind() + "; " + wanted(wanted) + " is expected.",
                wanted.equals("array") && found.isObject()
                        ? "Put [ and ] round it."
                        : schema.has("minimum") ? "Allowed is " + range(schema) + "." : "");
    }

    private Sentence choice(String subject) {
        List<String> words = new ArrayList<>();
        schema.path("enum").forEach(word -> words.add(word.stringValue()));
        if (found.isNumber() && words.contains(foundText())) {
            return new Sentence(
                    subject + " is the number " + foundText() + "; a text is expected.",
                    "Put it in quotes: \"" + foundText() + "\".");
        }
        List<String> nearest = found.isString() ? Nearest.to(found.stringValue(), words) : List.of();
        return new Sentence(
                subject + " is " + foundText() + ".",
                Quoted.didYouMean(nearest) + "Allowed: " + Quoted.list(words) + ".");
    }

    private Sentence length(String subject) {
        int least = schema.path("minItems").intValue(0);
        int most = schema.path("maxItems").intValue(Integer.MAX_VALUE);
        String wanted =
                least == most ? "Exactly " + least : found.size() < least ? "At least " + least : "At most " + most;
        String entries = found.isEmpty()
                ? " has no entry."
                : " has " + found.size() + (found.size() == 1 ? " entry." : " entries.");
        String meant = least == most && least == 2 ? ", [from, to]" : "";
        return new Sentence(
                subject + entries, wanted + (wanted.endsWith(" 1") ? " is" : " are") + " needed" + meant + ".");
    }

    private String subject() {
        String name = place.name();
        boolean index = !name.isEmpty() && name.chars().allMatch(Character::isDigit);
        return name.isEmpty()
                ? "The scenario"
                : index ? "Entry " + (Integer.parseInt(name) + 1) + within() : Quoted.name(name);
    }

    private String within() {
        String path = place.parent().path();
        return path.isEmpty() ? "" : " in " + path;
    }

    private String missing() {
        JsonNode key = schema.path("properties").path(place.name());
        String unit = KeyUnit.of(place);
        String range = key.has("minimum") ? " (" + range(key) + ")" : "";
        if (key.has("const")) {
            return "\"" + place.name() + "\": " + key.path("const") + ".";
        }
        return "\"" + place.name() + "\": …" + (range.isEmpty() && !unit.isEmpty() ? " (" + unit + ")" : range) + ".";
    }

    private String range(JsonNode rule) {
        String unit = KeyUnit.of(place);
        return rule.path("minimum") + " to " + rule.path("maximum") + (unit.isEmpty() ? "" : " " + unit);
    }

    private String foundText() {
        String spelling = positions.spelling(place);
        if (found.isNumber() && !spelling.isEmpty()) {
            String unit = KeyUnit.of(place);
            return spelling + (unit.isEmpty() ? "" : " " + unit);
        }
        return found.isString() ? Quoted.name(found.stringValue()) : found.isContainer() ? kind() : found.toString();
    }

    private String kind() {
        return found.isObject()
                ? "an object"
                : found.isArray()
                        ? "a list"
                        : found.isBoolean()
                                ? found.toString()
                                : found.isNumber()
                                        ? "the number " + foundText()
                                        : "the text " + Quoted.name(found.stringValue());
    }

    private String wanted(String type) {
        String unit = KeyUnit.of(place);
        return switch (type) {
            case "number" -> "a number" + (unit.isEmpty() ? "" : " in " + unit);
            case "integer" -> "a whole number";
            case "string" -> "a text in quotes";
            case "boolean" -> "true or false";
            case "array" -> "a list [ … ]";
            default -> "an object { … }";
        };
    }

    private static boolean isNumber(String type) {
        return type.equals("number") || type.equals("integer");
    }
}
