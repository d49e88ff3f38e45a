package curbwatt.scenarios.check;

import curbwatt.scenarios.file.ScenarioFile;
import java.util.List;

/** Every rule over a whole file. */
public final class ScenarioCheck {
    private final List<Rule> rules;

    /**
     * Makes the rules.
     *
     * @param fits tries labels
     */
    public ScenarioCheck(LabelFits fits) {
        rules = List.of(
                new CompletenessRule(),
                new NameRule(),
                new ReferenceRule(),
                new StageRule(),
                new ChemistryRule(),
                new BatteryRule(fits),
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
    }

    /** Notes everything that is wrong with a file whose parts are filled in. */
    public void run(ScenarioFile file, Findings findings) {
        rules.forEach(rule -> rule.look(file, findings));
    }
}
