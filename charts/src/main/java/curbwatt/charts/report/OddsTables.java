package curbwatt.charts.report;

import curbwatt.charts.wording.ChanceText;
import curbwatt.charts.wording.OddsInputText;
import curbwatt.charts.wording.PlainText;
import curbwatt.engine.study.odds.Chance;
import curbwatt.engine.study.odds.Importance;
import curbwatt.engine.study.odds.Input;
import curbwatt.engine.study.odds.OddsResult;
import java.util.ArrayList;
import java.util.List;

/**
 * The tables behind chances.
 *
 * @param result the draws
 */
record OddsTables(OddsResult result) {

    List<Table> all() {
        List<Table> tables = new ArrayList<>(List.of(chances(), inputs()));
        if (!result.holdImportance().isEmpty()) {
            tables.add(ranking("time-held", "What the time held depends on", result.holdImportance()));
        }
        if (!result.startImportance().isEmpty()) {
            tables.add(ranking("restart-margin", "What the restart margin depends on", result.startImportance()));
        }
        return tables;
    }

    private Table chances() {
        List<List<String>> lines = new ArrayList<>();
        result.held().ifPresent(held -> lines.add(line("Scene held as long as asked", held)));
        lines.add(line("Starts whenever it is looked at", result.starts()));
        lines.add(line("Starts with the margin asked", result.enoughMargin()));
        lines.add(line("A cutoff opens on low voltage", result.trips()));
        lines.add(line("It opens for nothing (nuisance)", result.nuisance()));
        lines.add(line("Everything asked is met", result.met()));
        return Table.of(
                "chances",
                "Chances",
                "Bounds with 95 % confidence.",
                List.of("What", "#Draws", "#Chance", "#From", "#To", "Bounds by"),
                lines);
    }

    private static List<String> line(String what, Chance chance) {
        return List.of(
                what,
                chance.hits() + " of " + chance.draws(),
                new ChanceText(chance).share(),
                ChanceText.share(chance.lowFraction()),
                ChanceText.share(chance.highFraction()),
                switch (chance.method()) {
                    case WILSON -> "Wilson's score interval";
                    case REPLICATES -> "spread of the replicates";
                });
    }

    private Table inputs() {
        return Table.of(
                "inputs",
                "What was drawn",
                "",
                List.of("Input", "What it is", "Spread"),
                result.inputs().stream().map(this::line).toList());
    }

    private List<String> line(Input input) {
        OddsInputText text = new OddsInputText(input);
        return List.of(text.name(), text.meaning(), text.spread(result.plan().spread(input)));
    }

    private Table ranking(String id, String title, List<Importance> ranking) {
        boolean shares = result.plan().indices();
        List<String> heads = new ArrayList<>(List.of("Input", "#Rank correlation", "#From", "#To"));
        if (shares) {
            heads.addAll(List.of("#Variance share", "#From", "#To", "#With interplay"));
        }
        return Table.of(
                id,
                title,
                "Bounds with 95 % confidence.",
                heads,
                ranking.stream().map(OddsTables::line).toList());
    }

    private static List<String> line(Importance importance) {
        List<String> cells = new ArrayList<>(List.of(
                new OddsInputText(importance.input()).name(),
                PlainText.number(importance.rank().rhoRatio(), 2),
                PlainText.number(importance.rank().lowRatio(), 2),
                PlainText.number(importance.rank().highRatio(), 2)));
        importance
                .share()
                .ifPresent(share -> cells.addAll(List.of(
                        PlainText.number(share.firstFraction(), 2),
                        PlainText.number(share.lowFraction(), 2),
                        PlainText.number(share.highFraction(), 2),
                        PlainText.number(share.totalFraction(), 2))));
        return cells;
    }
}
