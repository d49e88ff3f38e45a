package curbwatt.scenarios.assemble;

import curbwatt.engine.study.settings.SettingsPlan;
import curbwatt.engine.study.size.Candidate;
import curbwatt.engine.study.size.SizePlan;
import curbwatt.scenarios.file.SettingsEntry;
import curbwatt.scenarios.file.SizeEntry;
import curbwatt.scenarios.file.StudiesEntry;
import java.util.List;

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
                entry.size().map(this::size).orElseGet(SizePlan::usual),
                entry.size().map(this::labels).orElse(List.of()));
    }

    private SettingsPlan settings(SettingsEntry entry) {
        return guarded.build(entry.place(), () -> new SettingsPlan(entry.cutoff()));
    }

    private SizePlan size(SizeEntry entry) {
        return guarded.build(entry.place(), () -> SizePlans.of(entry));
    }

    private List<Candidate> labels(SizeEntry entry) {
        return guarded.build(
                entry.place(),
                () -> entry.labels().stream().map(CandidateAssembler::candidate).toList());
    }
}
