package curbwatt.scenarios.stock;

import curbwatt.scenarios.problem.Nearest;
import curbwatt.scenarios.problem.Problem;
import curbwatt.scenarios.problem.Quoted;
import curbwatt.scenarios.problem.ScenarioException;
import curbwatt.scenarios.problem.SourcePosition;
import java.util.List;

/** The scenario files that ship with the program, to begin with and to copy. */
public final class DemoScenarios {
    private static final List<String> NAMES = List.of(
            "night-closure",
            "two-batteries",
            "high-idle",
            "shed-in-steps",
            "lane-watch",
            "charger-truck",
            "winter-breakdown",
            "winter-shifts");

    private DemoScenarios() {}

    /** Returns the names, the gentlest first. */
    public static List<String> names() {
        return NAMES;
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
                    new SourcePosition("demo:" + name, 0, 0, ""),
                    "There is no demo scenario " + Quoted.name(name) + ".",
                    Quoted.didYouMean(Nearest.to(name, NAMES)) + "There are " + Quoted.list(NAMES) + ".")));
        }
        return Resource.text("demo/" + name + ".json");
    }
}
