package curbwatt.scenarios.stock;

import curbwatt.scenarios.problem.Nearest;
import curbwatt.scenarios.problem.Problem;
import curbwatt.scenarios.problem.Quoted;
import curbwatt.scenarios.problem.ScenarioException;
import curbwatt.scenarios.problem.SourcePosition;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** The scenario files that ship with the program, to begin with and to copy. */
public final class DemoScenarios {
    /** Stands before a name where a file could stand too. */
    public static final String PREFIX = "demo:";

    private static final String ENDING = ".json";

    private static final List<String> NAMES = List.of(
            "night-closure",
            "two-batteries",
            "high-idle",
            "shed-in-steps",
            "quiet-watch",
            "lane-watch",
            "charger-truck",
            "cold-pack",
            "tapped-feed",
            "winter-breakdown",
            "winter-shifts");

    private DemoScenarios() {}

    /** Returns the names, the gentlest first. */
    public static List<String> names() {
        return NAMES;
    }

    /** Returns how to name the demo that somebody may have meant by a file name; empty if there is none of that name. */
    public static Optional<String> argument(Path file) {
        String name = file.toString();
        String bare = name.endsWith(ENDING) ? name.substring(0, name.length() - ENDING.length()) : name;
        return NAMES.contains(bare) ? Optional.of(PREFIX + bare) : Optional.empty();
    }

    /**
     * Returns the text of one, comments included.
     *
     * @throws ScenarioException if there is none of that name
     */
    public static String text(String name) {
        if (!NAMES.contains(name)) {
            throw new ScenarioException(List.of(new Problem(
                    Problem.Severity.ERROR,
                    new SourcePosition(PREFIX + name, 0, 0, ""),
                    "There is no demo scenario " + Quoted.name(name) + ".",
                    Quoted.didYouMean(Nearest.to(name, NAMES)) + "There are " + Quoted.list(NAMES) + ".")));
        }
        return Resource.text("demo/" + name + ENDING);
    }
}
