package curbwatt.charts.run;

import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.study.Answer;
import curbwatt.engine.study.RunPool;
import curbwatt.engine.study.StudyWatch;
import curbwatt.engine.verdict.Judge;
import curbwatt.scenarios.assemble.InputDifference;
import curbwatt.scenarios.assemble.ReadyScenario;
import curbwatt.scenarios.assemble.ScenarioInput;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Several scenarios side by side.
 *
 * @param columns the scenarios and what came of each, two to six
 * @param differences where their files say different things
 */
public record Comparison(List<Column> columns, List<InputDifference> differences) {

    /** Most that one picture tells apart. */
    public static final int MOST = 6;

    /**
     * One of the scenarios.
     *
     * @param letter A, B, C …
     * @param name what it is called beside the letter
     * @param scenario the scenario
     * @param run its recorded run, by letter and name
     * @param answer what the run means for what was asked
     */
    public record Column(String letter, String name, ReadyScenario scenario, Trajectory run, Answer answer) {

        /** Letter and name. */
        public String label() {
            return letter + " " + name;
        }
    }

    /**
     * A scenario to compare.
     *
     * @param name what it is called
     * @param input the scenario and what its file says
     */
    public record Entry(String name, ScenarioInput input) {}

    /** Refuses fewer than two and more than can be told apart. */
    public Comparison {
        columns = List.copyOf(columns);
        Objects.requireNonNull(differences, "differences");
        differences = List.copyOf(differences);
        if (columns.size() < 2 || columns.size() > MOST) {
            throw new IllegalArgumentException(
                    "columns has " + columns.size() + "; two to " + MOST + " can be compared");
        }
    }

    /** Runs them all. */
    public static Comparison run(List<Entry> entries, RunPool pool, StudyWatch watch) {
        List<Integer> places = new ArrayList<>();
        for (int i = 0; i < entries.size(); i++) {
            places.add(i);
        }
        return new Comparison(
                pool.each(places, place -> column(place, entries.get(place)), watch),
                InputDifference.among(entries.stream().map(Entry::input).toList()));
    }

    private static Column column(int place, Entry entry) {
        ReadyScenario scenario = entry.input().ready();
        String letter = Character.toString('A' + place);
        Simulation simulation = Simulation.of(scenario.vehicle(), scenario.scene());
        Trajectory run = Trajectory.of(letter + " " + entry.name(), simulation, scenario.traceSpacingS());
        Judge judge = new Judge(scenario.vehicle(), scenario.scene(), scenario.requirements());
        return new Column(letter, entry.name(), scenario, run, new Answer(run.result(), judge.judge(run.result())));
    }
}
