package curbwatt.scenarios.check;

import curbwatt.scenarios.file.ScenarioFile;
import java.util.List;

/** Every rule over a whole file. */
public final class ScenarioCheck {
    private static final List<Rule> RULES = List.of(
            new CompletenessRule(),
            new NameRule(),
            new ReferenceRule(),
            new StageRule(),
            new ChemistryRule(),
            new BatteryRule(),
            new LinkRule(),
            new NodeRule(),
            new AlternatorRule(),
            new FeedRule(),
            new PatternRule(),
            new CountRule(),
            new CutoffRule(),
            new EngineDeviceRule(),
            new SceneRule(),
            new UnderHoodRule(),
            new RosterRule(),
            new RequirementRule(),
            new StudiesRule(),
            new SettingsRule(),
            new OddsRule(),
            new RechargeRule());

    private ScenarioCheck() {}

    /** Notes everything that is wrong with a file whose parts are filled in. */
    public static void run(ScenarioFile file, Findings findings) {
        RULES.forEach(rule -> rule.look(file, findings));
    }
}
