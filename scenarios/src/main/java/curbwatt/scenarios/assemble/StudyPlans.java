package curbwatt.scenarios.assemble;

import curbwatt.engine.study.odds.OddsPlan;
import curbwatt.engine.study.settings.SettingsPlan;
import java.util.Objects;

/**
 * What each study of a scenario looks at: what the file says under {@code studies}, and the usual for what it leaves
 * out.
 *
 * @param settings how the settings of a cutoff are searched
 * @param odds how uncertain the inputs are, and how many draws are made
 */
public record StudyPlans(SettingsPlan settings, OddsPlan odds) {

    /** Refuses missing parts. */
    public StudyPlans {
        Objects.requireNonNull(settings, "settings");
        Objects.requireNonNull(odds, "odds");
    }

    /** The usual of every study. */
    public static StudyPlans usual() {
        return new StudyPlans(SettingsPlan.usual(), OddsPlan.usual());
    }
}
