package curbwatt.scenarios.assemble;

import curbwatt.engine.battery.Chemistry;
import curbwatt.engine.scene.Scene;
import curbwatt.engine.study.size.Candidate;
import curbwatt.engine.vehicle.Vehicle;
import curbwatt.scenarios.check.Findings;
import curbwatt.scenarios.check.LabelFits;
import curbwatt.scenarios.check.PartFilling;
import curbwatt.scenarios.check.ScenarioCheck;
import curbwatt.scenarios.file.PartKind;
import curbwatt.scenarios.file.ScenarioFile;
import curbwatt.scenarios.file.SceneEntry;
import curbwatt.scenarios.file.Setting;
import curbwatt.scenarios.file.TraceEntry;
import curbwatt.scenarios.file.VehicleEntry;
import curbwatt.scenarios.json.ScenarioReader;
import curbwatt.scenarios.json.SourceText;
import curbwatt.scenarios.problem.ScenarioException;
import curbwatt.scenarios.stock.Catalogue;
import curbwatt.scenarios.stock.DemoScenarios;
import java.nio.file.Path;
import java.util.List;

/**
 * Opens scenarios. Holds the catalogue and the schema; make one and use it any number of times.
 *
 * <p>Every method throws {@link ScenarioException} with all problems of the input if there is an error among them.
 */
public final class Scenarios {
    private static final double USUAL_SPACING_S = 10;

    private final ScenarioReader reader = new ScenarioReader();
    private final Catalogue catalogue = Catalogue.shipped();
    private final LabelFits fits = new LabelFits();
    private final ScenarioCheck check = new ScenarioCheck(fits);

    /** Opens a file. */
    public ReadyScenario open(Path file) {
        return open(file, List.of());
    }

    /** Opens a file in which some values are set anew. */
    public ReadyScenario open(Path file, List<Setting> settings) {
        return input(file, settings).ready();
    }

    /** Opens a scenario that ships with the program; {@link DemoScenarios#names()} lists them. */
    public ReadyScenario demo(String name) {
        return demo(name, List.of());
    }

    /** Opens a scenario that ships with the program, some values of it set anew. */
    public ReadyScenario demo(String name, List<Setting> settings) {
        return demoInput(name, settings).ready();
    }

    /**
     * Opens a text.
     *
     * @param sourceName stands for the file's name in problems
     * @param text the scenario
     */
    public ReadyScenario read(String sourceName, String text) {
        return input(new SourceText(sourceName, text), List.of()).ready();
    }

    /** Opens a file in which some values are set anew, and keeps what it says. */
    public ScenarioInput input(Path file, List<Setting> settings) {
        String remedy = DemoScenarios.argument(file)
                .map(demo -> "Write " + demo + " for the demo of this name, or check the name and the folder.")
                .orElse("Check the name and the folder.");
        return input(SourceText.of(file, remedy), settings);
    }

    /** Opens a scenario that ships with the program, some values of it set anew, and keeps what it says. */
    public ScenarioInput demoInput(String name, List<Setting> settings) {
        return input(new SourceText(DemoScenarios.PREFIX + name, DemoScenarios.text(name)), settings);
    }

    /**
     * Returns a scenario's text without its comments, as JSON that any reader knows; nothing but its form is checked.
     *
     * @param sourceName stands for the file's name in problems
     * @param text the scenario
     */
    public String plain(String sourceName, String text) {
        return reader.plain(new SourceText(sourceName, text));
    }

    /** Returns the parts that scenarios can name. */
    public Catalogue catalogue() {
        return catalogue;
    }

    /** Returns the catalogue's batteries of a chemistry, for a study that looks for one to buy. */
    public List<Candidate> batteries(Chemistry chemistry) {
        return catalogue.parts(PartKind.BATTERY).stream()
                .map(part -> new CandidateAssembler(fits)
                        .candidate(part.name(), part.battery().orElseThrow()))
                .filter(candidate -> candidate.parameters().chemistry() == chemistry)
                .toList();
    }

    private ScenarioInput input(SourceText source, List<Setting> settings) {
        ScenarioReader.Reading reading = reader.read(source, settings);
        Findings findings = new Findings(reading.positions(), reading.problems(), reading.spoilt());
        ScenarioFile file = new PartFilling(catalogue, findings).fill(reading.file());
        check.run(file, findings);
        if (findings.hasErrors()) {
            throw new ScenarioException(findings.inOrder());
        }
        return new ScenarioInput(assembled(source.name(), file, settings, findings), reading.values());
    }

    private ReadyScenario assembled(String source, ScenarioFile file, List<Setting> settings, Findings findings) {
        Guarded guarded = new Guarded(findings);
        Assumptions assumptions = new Assumptions();
        assumptions.set(settings);
        VehicleEntry entry = file.vehicle().orElseThrow();
        assumptions.parts(entry);
        Vehicle vehicle = new VehicleAssembler(guarded, assumptions, fits)
                .vehicle(entry, file.scene().flatMap(SceneEntry::start));
        SceneAssembler scenes = new SceneAssembler(guarded, assumptions);
        Scene inFile = scenes.scene(file.title().orElseThrow(), file.scene().orElseThrow());
        Scene scene = file.requirements()
                .map(asked -> scenes.parkedAfter(inFile, asked))
                .orElse(inFile);
        assumptions.neverOn(vehicle, scene);
        new TradeDoubts(file, findings).look(vehicle, inFile);
        return new ReadyScenario(
                source,
                file.title().orElseThrow(),
                file.description().orElse(""),
                vehicle,
                new PlanAssembler(guarded, vehicle, inFile).plans(entry.circuits()),
                scene,
                file.scene()
                        .flatMap(SceneEntry::roster)
                        .map(roster -> new RosterAssembler(guarded, inFile).roster(roster)),
                file.requirements()
                        .map(new RequirementAssembler(guarded, inFile)::requirements)
                        .orElse(List.of()),
                file.studies().map(new StudiesAssembler(guarded, fits)::plans).orElseGet(StudyPlans::usual),
                file.trace().flatMap(TraceEntry::spacingS).orElse(USUAL_SPACING_S),
                assumptions.sentences(),
                findings.inOrder());
    }
}
