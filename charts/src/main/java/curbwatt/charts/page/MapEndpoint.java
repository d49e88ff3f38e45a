package curbwatt.charts.page;

import curbwatt.charts.output.JsonObject;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.study.Question;
import curbwatt.engine.study.RunPool;
import curbwatt.engine.study.settings.SettingsPlan;
import curbwatt.engine.study.settings.SettingsStudy;
import curbwatt.scenarios.assemble.ReadyScenario;
import curbwatt.scenarios.assemble.Scenarios;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Runs a scenario for every pair of trip level and delay of one cutoff, and answers with a line for each as it is done.
 * Where the scenario asks for something, it is the engine's search for settings, with its recommendation. The address
 * says which: {@code ?cutoff=0&tripV=11.2,11.4&delayS=0,30}. The work ends when nobody listens any more.
 *
 * @param scenarios reads the scenario
 * @param work what is under way
 * @param turns who may compute
 */
record MapEndpoint(Scenarios scenarios, TabWork work, Turns turns) implements Endpoint {

    private static final int MOST_STEPS = 24;
    private static final double LONGEST_S = 600;

    @Override
    public String method() {
        return "POST";
    }

    @Override
    public void answer(Visit visit) throws IOException {
        List<Double> tripsV = numbers(visit, "tripV");
        List<Double> delaysS = numbers(visit, "delayS");
        int cutoff = index(visit);
        ReadyScenario scenario = scenarios.read("scenario", visit.text());
        if (cutoff >= scenario.vehicle().cutoffs().size()) {
            throw new RefusedException(400, "The vehicle has no such cutoff.");
        }
        String name = scenario.vehicle().cutoffs().get(cutoff).name();
        Question question = new Question(Simulation.of(scenario.vehicle(), scenario.scene()), scenario.requirements());
        SettingsPlan plan = plan(scenario, name, tripsV, delaysS);
        TabWork.Ticket ticket = work.begin("map", visit.header("Curbwatt-Tab"));
        try (Lines lines = visit.lines()) {
            Watch watch = Watch.over(ticket, LONGEST_S, lines::pulse);
            if (question.requirements().isEmpty()) {
                fill(new SettingSweep(scenario, name, new PageRun()), tripsV, delaysS, lines, watch);
            } else {
                search(new Question(question.simulation(), question.requirements(), watch), plan, lines, watch);
            }
        } catch (StoppedException e) {
            // the answer has begun: it ends without its last line, and the page knows from that
        } finally {
            work.end(ticket);
        }
    }

    private static SettingsPlan plan(ReadyScenario scenario, String name, List<Double> tripsV, List<Double> delaysS) {
        try {
            return new SettingsPlan(
                    Optional.of(name),
                    tripsV,
                    delaysS,
                    List.of(),
                    scenario.studies().settings().spread());
        } catch (IllegalArgumentException e) {
            throw new RefusedException(400, e.getMessage() + ".");
        }
    }

    /** The engine's own search, on this thread alone: knobs are turned meanwhile. */
    private void search(Question question, SettingsPlan plan, Lines lines, Watch watch) {
        SettingSearch told = new SettingSearch(lines, turns, watch);
        SettingsStudy study = new SettingsStudy(question, plan);
        told.tell(turns.take(watch, () -> study.run(new RunPool(1), told, told)));
    }

    /** Coarse first, so that the picture is there early and only grows finer. */
    private void fill(SettingSweep sweep, List<Double> tripsV, List<Double> delaysS, Lines lines, Watch watch) {
        int all = tripsV.size() * delaysS.size();
        List<int[]> order = order(tripsV.size(), delaysS.size());
        for (int done = 0; done < all; done++) {
            int column = order.get(done)[0];
            int row = order.get(done)[1];
            JsonObject cell = turns.take(watch, () -> sweep.at(tripsV.get(column), delaysS.get(row), watch));
            lines.write(cell.with("column", column)
                    .with("row", row)
                    .with("done", done + 1)
                    .with("all", all));
        }
        lines.write(new JsonObject().with("finished", true));
    }

    private static List<int[]> order(int columns, int rows) {
        List<int[]> order = new ArrayList<>();
        for (int step = 4; step >= 1; step /= 2) {
            for (int row = 0; row < rows; row += step) {
                for (int column = 0; column < columns; column += step) {
                    boolean before = step < 4 && row % (2 * step) == 0 && column % (2 * step) == 0;
                    if (!before) {
                        order.add(new int[] {column, row});
                    }
                }
            }
        }
        return order;
    }

    private static int index(Visit visit) {
        try {
            return Math.max(0, Integer.parseInt(visit.word("cutoff").orElse("0")));
        } catch (NumberFormatException e) {
            throw new RefusedException(400, "cutoff is not a whole number.");
        }
    }

    private static List<Double> numbers(Visit visit, String name) {
        List<Double> numbers = new ArrayList<>();
        try {
            for (String word : visit.word(name).orElse("").split(",", -1)) {
                numbers.add(Double.parseDouble(word));
            }
        } catch (NumberFormatException e) {
            throw new RefusedException(400, name + " is not a list of numbers parted by commas.");
        }
        if (numbers.size() > MOST_STEPS || numbers.stream().anyMatch(number -> !Double.isFinite(number))) {
            throw new RefusedException(400, name + " has more than " + MOST_STEPS + " numbers, or one without end.");
        }
        return numbers;
    }
}
