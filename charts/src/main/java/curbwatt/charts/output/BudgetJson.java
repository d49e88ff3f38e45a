package curbwatt.charts.output;

import curbwatt.engine.budget.LoadBudget;
import java.util.List;

/** The load budget on paper, for other tools; {@code docs/result.md} explains it. */
public final class BudgetJson {

    private BudgetJson() {}

    /** The whole document, one entry for each phase. */
    public static String of(List<LoadBudget> budgets) {
        return JsonText.of(new JsonObject()
                .with("version", ResultJson.VERSION)
                .with("phases", budgets.stream().map(BudgetJson::phase).toList()));
    }

    private static JsonObject phase(LoadBudget budget) {
        return new JsonObject()
                .with("phase", budget.phase())
                .with("voltageV", budget.voltageV())
                .with("meanA", budget.meanA())
                .with("peakA", budget.peakA())
                .with("alternatorA", budget.alternatorA())
                .with("balanceRpm", budget.balanceRpm())
                .with("loads", budget.lines().stream().map(BudgetJson::load).toList());
    }

    private static JsonObject load(LoadBudget.Line line) {
        return new JsonObject()
                .with("circuit", line.circuit())
                .with("load", line.load())
                .with("on", line.on())
                .with("onFraction", line.onFraction())
                .with("meanA", line.meanA())
                .with("peakA", line.peakA());
    }
}
