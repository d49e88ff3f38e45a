package curbwatt.scenarios.problem;

import java.util.List;

/** An input that can't be used, with everything that is wrong with it. */
public final class ScenarioException extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final transient List<Problem> problems;

    /** Makes one from all problems found, in order of their place. */
    public ScenarioException(List<Problem> problems) {
        super(problems.size() + " problem(s), first: " + problems.get(0).message());
        this.problems = List.copyOf(problems);
    }

    /** All problems, errors and warnings, in order of their place. */
    public List<Problem> problems() {
        return problems;
    }
}
