package curbwatt.scenarios.json;

import curbwatt.scenarios.file.Place;
import curbwatt.scenarios.file.Setting;
import curbwatt.scenarios.problem.Nearest;
import curbwatt.scenarios.problem.Problem;
import curbwatt.scenarios.problem.Quoted;
import curbwatt.scenarios.problem.SourcePosition;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Sets values of a document as if its text had them. Where something set is wrong later on, the setting is named
 * instead of a line.
 */
final class TreeChange {

    private final TreeReader.Tree tree;
    private final Setting setting;

    private TreeChange(TreeReader.Tree tree, Setting setting) {
        this.tree = tree;
        this.setting = setting;
    }

    /** Sets a value; what stands in the way comes back as a problem. */
    static Optional<Problem> apply(TreeReader.Tree tree, Setting setting) {
        return new TreeChange(tree, setting).apply();
    }

    private Optional<Problem> apply() {
        List<Setting.Step> steps = setting.steps();
        JsonNode node = tree.root();
        Place place = Place.ROOT;
        for (int i = 0; i < steps.size(); i++) {
            Setting.Step step = steps.get(i);
            boolean last = i == steps.size() - 1;
            if (step.inList() ? !node.isArray() : !node.isObject()) {
                return Optional.of(wrongKind(node, place, step));
            }
            if (node instanceof ArrayNode list) {
                int index = indexOf(list, step.name());
                if (index < 0) {
                    return Optional.of(noEntry(list, place, step.name()));
                }
                place = place.item(index);
            } else {
                place = place.key(step.name());
                if (!last && !node.has(step.name())) {
                    if (setting.takesOut() || steps.get(i + 1).inList()) {
                        return Optional.of(noKey(node, place.parent(), step.name()));
                    }
                    // the schema says whether an object may stand here
                    begin((ObjectNode) node, place);
                }
            }
            if (last) {
                return setting.takesOut() ? takeOut(node, place) : put(node, place);
            }
            node = node.isArray() ? node.get(Integer.parseInt(place.name())) : node.get(step.name());
        }
        return Optional.empty();
    }

    private void begin(ObjectNode parent, Place place) {
        parent.putObject(place.name());
        tree.positions().noteSetting(place, setting.toString());
        tree.positions().noteValue(place, new TextPosition(0, 0));
    }

    private Optional<Problem> put(JsonNode parent, Place place) {
        tree.positions().forget(place);
        JsonNode value = TreeReader.fragment(setting, place, tree.positions());
        if (parent instanceof ArrayNode list) {
            list.set(Integer.parseInt(place.name()), value);
        } else if (parent instanceof ObjectNode object) {
            object.set(place.name(), value);
        }
        return Optional.empty();
    }

    private Optional<Problem> takeOut(JsonNode parent, Place place) {
        if (!(parent instanceof ObjectNode object)) {
            return Optional.of(problem(
                    place,
                    "Only keys can be taken out, not entries of lists.",
                    "Give the entry another value, or write the whole list."));
        }
        if (!object.has(place.name())) {
            return Optional.of(noKey(object, place.parent(), place.name()));
        }
        tree.positions().forget(place);
        object.remove(place.name());
        return Optional.empty();
    }

    /** The place of an entry by its place or by its name; -1: there is none. */
    private static int indexOf(ArrayNode list, String name) {
        List<String> names = names(list);
        if (names.contains(name)) {
            return names.indexOf(name);
        }
        if (!name.matches("[0-9]{1,9}")) {
            return -1;
        }
        int index = Integer.parseInt(name);
        return index < list.size() ? index : -1;
    }

    private static List<String> names(ArrayNode list) {
        List<String> names = new ArrayList<>();
        for (JsonNode entry : list) {
            names.add(entry.path("name").isString() ? entry.get("name").stringValue() : "");
        }
        return names;
    }

    private Problem wrongKind(JsonNode node, Place place, Setting.Step step) {
        String what = place.equals(Place.ROOT) ? "The scenario" : place.path();
        if (node.isArray()) {
            return problem(
                    place,
                    what + " is a list, and " + Quoted.name(step.name()) + " is no entry of one.",
                    "Put the entry's place or name in brackets, as in " + place.path() + "[0].");
        }
        return node.isObject()
                ? problem(
                        place,
                        what + " is no list, and [" + step.name() + "] is an entry of one.",
                        "Write ." + step.name() + " for a key.")
                : problem(place, what + " is a single value; nothing lies inside it.", "Set the value itself.");
    }

    private Problem noEntry(ArrayNode list, Place place, String name) {
        List<String> names =
                names(list).stream().filter(known -> !known.isEmpty()).toList();
        String known = names.isEmpty()
                ? "It has " + list.size() + (list.size() == 1 ? " entry" : " entries") + ", counted from 0."
                : "There are " + Quoted.list(names) + ".";
        return problem(
                place,
                place.path() + " has no entry " + Quoted.name(name) + ".",
                Quoted.didYouMean(Nearest.to(name, names)) + known);
    }

    private Problem noKey(JsonNode object, Place place, String key) {
        List<String> keys = List.copyOf(object.propertyNames());
        String what = place.equals(Place.ROOT) ? "The scenario" : place.path();
        return problem(
                place.key(key),
                what + " has no key " + Quoted.name(key) + ".",
                Quoted.didYouMean(Nearest.to(key, keys)) + "It has " + Quoted.list(keys) + ".");
    }

    private Problem problem(Place place, String message, String remedy) {
        return new Problem(
                Problem.Severity.ERROR, new SourcePosition("setting " + setting, 0, 0, place.path()), message, remedy);
    }
}
