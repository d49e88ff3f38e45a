package curbwatt.charts.command;

import curbwatt.charts.wording.PlainText;
import curbwatt.scenarios.problem.Problem;
import curbwatt.scenarios.problem.SourcePosition;
import java.io.PrintWriter;
import java.util.List;

/** Problems as lines for people, each beginning as editors and other tools like it: {@code file:line:column}. */
final class ProblemPrinter {

    private ProblemPrinter() {}

    /** All problems that stop the work, and the warnings with them. */
    static void print(List<Problem> problems, PrintWriter err) {
        problems.forEach(problem -> print(problem, err));
        long errors = problems.stream()
                .filter(problem -> problem.severity() == Problem.Severity.ERROR)
                .count();
        long warnings = problems.size() - errors;
        err.println(PlainText.count(errors, "error") + (warnings > 0 ? ", " + PlainText.count(warnings, "warning") : "")
                + ". Nothing was written.");
    }

    /** One problem. */
    static void print(Problem problem, PrintWriter err) {
        String kind = problem.severity() == Problem.Severity.ERROR ? "error" : "warning";
        String path = problem.position().path();
        err.println(place(problem.position()) + ": " + kind + ": " + (path.isEmpty() ? "" : path + ": ")
                + problem.message());
        if (!problem.remedy().isEmpty()) {
            err.println("    " + problem.remedy());
        }
    }

    private static String place(SourcePosition position) {
        if (position.line() == 0) {
            return position.file();
        }
        return position.file() + ":" + position.line() + (position.column() == 0 ? "" : ":" + position.column());
    }
}
