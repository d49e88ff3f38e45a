package curbwatt.charts.command;

import curbwatt.charts.report.OddsReport;
import curbwatt.engine.simulation.Simulation;
import curbwatt.engine.study.Question;
import curbwatt.engine.study.odds.OddsPlan;
import curbwatt.engine.study.odds.OddsStudy;
import curbwatt.engine.study.odds.Sampling;
import curbwatt.scenarios.assemble.ReadyScenario;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Runs a scene many times with uncertain inputs. */
@Command(
        name = "odds",
        header = "Run a scene many times with uncertain inputs: what is the chance that it goes well?",
        description = {
            "Draws battery health, temperature, load current, alternator heat, sensor accuracy and scene length from the"
                    + " spreads under studies.odds of the scenario, or the usual ones (docs/studies.md), runs each draw, and"
                    + " says the chance that the scene is held, that the engine starts, and of a nuisance trip, each with"
                    + " 95 %% confidence; and which input matters most."
        },
        footer = {
            "Examples:",
            "  curbwatt odds demo:lane-watch",
            "  curbwatt odds demo:lane-watch --runs 4096 --indices --out reports/lane-watch-odds",
            "  curbwatt odds trucks/truck-4.json --sampling seeded --runs 2000 --seed 7"
        })
final class OddsCommand implements Callable<Integer> {

    @Mixin
    private ScenarioArgument scenario;

    @Mixin
    private StudyOptions options;

    @Option(
            names = "--runs",
            paramLabel = "N",
            description =
                    "Number of draws, 64 to 65536; a power of two unless the sampling is seeded. Default: what the"
                            + " scenario says, or 1024.")
    private Integer runs;

    @Option(
            names = "--seed",
            paramLabel = "N",
            description = "What the random numbers begin with, 0 or more; the same seed gives the same report. Default:"
                    + " what the scenario says, or 1.")
    private Long seed;

    @Option(
            names = "--sampling",
            paramLabel = "HOW",
            description =
                    "sobol: draws spread evenly by a shifted Sobol sequence; seeded: each draw at random. Default: what"
                            + " the scenario says, or sobol.")
    private String sampling;

    @Option(
            names = "--indices",
            description =
                    "Also say which share of the variance goes back to each input. Takes as many runs again, and once"
                            + " more for each input.")
    private boolean indices;

    @Override
    public Integer call() {
        ReadyScenario ready = scenario.open();
        OddsPlan plan = plan(ready.studies().odds());
        Question question = new Question(Simulation.of(ready.vehicle(), ready.scene()), ready.requirements());
        OddsStudy study = new OddsStudy(question, plan);
        if (study.inputs().isEmpty()) {
            throw new InputException(
                    ready.source() + ": every input under studies.odds is fixed; nothing is drawn. Give"
                            + " one of them a distribution (docs/studies.md)");
        }
        return options.carryOut(ready, scenario.name(), (pool, watch) -> OddsReport.of(ready, study.run(pool, watch)));
    }

    private OddsPlan plan(OddsPlan said) {
        if (seed != null && seed < 0) {
            throw new InputException("--seed is " + seed + "; allowed is 0 or more");
        }
        try {
            return said.drawing(
                    runs == null ? said.runs() : runs,
                    seed == null ? said.seed() : seed,
                    sampling == null ? said.sampling() : sampling(),
                    indices || said.indices());
        } catch (IllegalArgumentException e) {
            throw new InputException("--" + e.getMessage() + (sampling == null ? ", or --sampling seeded" : ""));
        }
    }

    private Sampling sampling() {
        for (Sampling known : Sampling.values()) {
            if (known.name().toLowerCase(Locale.ROOT).equals(sampling)) {
                return known;
            }
        }
        throw new InputException("--sampling is '" + sampling + "'; allowed are sobol and seeded");
    }
}
