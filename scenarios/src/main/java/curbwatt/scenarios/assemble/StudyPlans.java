package curbwatt.scenarios.assemble;

import curbwatt.engine.study.idle.IdlePlan;
import curbwatt.engine.study.odds.OddsPlan;
import curbwatt.engine.study.recharge.RechargePlan;
import curbwatt.engine.study.settings.SettingsPlan;
import curbwatt.engine.study.size.Candidate;
import curbwatt.engine.study.size.SizePlan;
import java.util.List;
import java.util.Objects;

/**
 * What each study of a scenario looks at: what the file says under {@code studies}, and the usual for what it leaves
 * out.
 *
 * @param settings how the settings of a cutoff are searched
 * @param size what a battery is sized for
 * @param labels batteries that the fleet can buy; empty: the catalogue's
 * @param idle by what ways of standing are compared
 * @param odds how uncertain the inputs are, and how many draws are made
 * @param recharge how batteries are recharged after the scene
 */
public record StudyPlans(
        SettingsPlan settings,
        SizePlan size,
        List<Candidate> labels,
        IdlePlan idle,
        OddsPlan odds,
        RechargePlan recharge) {

    /** Refuses missing parts. */
    public StudyPlans {
        Objects.requireNonNull(settings, "settings");
        Objects.requireNonNull(size, "size");
        labels = List.copyOf(labels);
        Objects.requireNonNull(idle, "idle");
        Objects.requireNonNull(odds, "odds");
        Objects.requireNonNull(recharge, "recharge");
    }

    /** The usual of every study. */
    public static StudyPlans usual() {
        return new StudyPlans(
                SettingsPlan.usual(),
                SizePlan.usual(),
                List.of(),
                IdlePlan.usual(),
                OddsPlan.usual(),
                RechargePlan.usual());
    }
}
