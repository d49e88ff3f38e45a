package curbwatt.scenarios.assemble;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A place at which scenario files say different things.
 *
 * @param path the place, as settings spell it
 * @param values what each of them says there; empty: nothing
 */
public record InputDifference(String path, List<Optional<String>> values) {
    /** What is for people alone. */
    private static final Set<String> WORDS = Set.of("$schema", "title", "description");

    /** Copies the list. */
    public InputDifference {
        values = List.copyOf(values);
    }

    /** Every place at which not all say the same, in the order of the first that speaks of it. */
    public static List<InputDifference> among(List<ScenarioInput> inputs) {
        Set<String> paths = new LinkedHashSet<>();
        inputs.forEach(input -> paths.addAll(input.values().keySet()));
        paths.removeAll(WORDS);
        List<InputDifference> differences = new ArrayList<>();
        for (String path : paths) {
            List<Optional<String>> values = inputs.stream()
                    .map(ScenarioInput::values)
                    .map(of -> said(of, path))
                    .toList();
            if (values.stream().distinct().count() > 1) {
                differences.add(new InputDifference(path, values));
            }
        }
        return List.copyOf(differences);
    }

    private static Optional<String> said(Map<String, String> values, String path) {
        return Optional.ofNullable(values.get(path));
    }
}
