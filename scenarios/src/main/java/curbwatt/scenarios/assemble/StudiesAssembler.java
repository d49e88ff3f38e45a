package curbwatt.scenarios.assemble;

import curbwatt.engine.study.odds.OddsPlan;
import curbwatt.engine.study.settings.SettingsPlan;
import curbwatt.scenarios.file.SettingsEntry;
import curbwatt.scenarios.file.StudiesEntry;

/**
 * From checked entries to what each study looks at.
 *
 * @param guarded catches what the engine refuses
 */
record StudiesAssembler(Guarded guarded) {

    /** Returns the plans, with the usual for what is left out. */
    StudyPlans plans(StudiesEntry entry) {
        return new StudyPlans(
                entry.settings().map(this::settings).orElseGet(SettingsPlan::usual),
                entry.odds().map(new OddsAssembler(guarded)::plan).orElseGet(OddsPlan::usual));
    }

    private SettingsPlan settings(SettingsEntry entry) {
        return guarded.build(entry.place(), () -> new SettingsPlan(entry.cutoff()));
    }
}
