package curbwatt.scenarios.assemble;

import curbwatt.engine.study.idle.IdlePlan;
import curbwatt.engine.study.settings.SettingsPlan;
import java.util.Objects;

/**
 * What each study of a scenario looks at: what the file says under {@code studies}, and the usual for what it leaves
 * out.
 *
 * @param settings how the settings of a cutoff are searched
 * @param idle by what ways of standing are compared
 */
public record StudyPlans(SettingsPlan settings, IdlePlan idle) {

    /** Refuses missing parts. */
    public StudyPlans {
        Objects.requireNonNull(settings, "settings");
        Objects.requireNonNull(idle, "idle");
    }

    /** The usual of every study. */
    public static StudyPlans usual() {
        return new StudyPlans(SettingsPlan.usual(), IdlePlan.usual());
    }
}
