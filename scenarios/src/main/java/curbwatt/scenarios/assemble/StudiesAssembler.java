package curbwatt.scenarios.assemble;

import curbwatt.engine.study.idle.IdlePlan;
import curbwatt.engine.study.idle.money.Prices;
import curbwatt.engine.study.settings.SettingsPlan;
import curbwatt.scenarios.file.IdleEntry;
import curbwatt.scenarios.file.SettingsEntry;
import curbwatt.scenarios.file.StudiesEntry;
import java.util.Set;

/**
 * From checked entries to what each study looks at.
 *
 * @param guarded catches what the engine refuses
 */
record StudiesAssembler(Guarded guarded) {
    private static final double USUAL_DEVICE_YEARS = 10;

    /** Returns the plans, with the usual for what is left out. */
    StudyPlans plans(StudiesEntry entry) {
        return new StudyPlans(
                entry.settings().map(this::settings).orElseGet(SettingsPlan::usual),
                entry.idle().map(this::idle).orElseGet(IdlePlan::usual));
    }

    private SettingsPlan settings(SettingsEntry entry) {
        return guarded.build(entry.place(), () -> new SettingsPlan(entry.cutoff()));
    }

    private IdlePlan idle(IdleEntry entry) {
        return guarded.build(
                entry.place(),
                () -> new IdlePlan(
                        entry.scenesPerYear().orElse(IdlePlan.USUAL_SCENES_PER_YEAR),
                        Set.copyOf(entry.engineStages()),
                        entry.fuelPricePerLitre()
                                .map(fuel -> new Prices(
                                        entry.currency().orElse(""),
                                        fuel,
                                        entry.wearPricePerHour().orElse(0.0),
                                        entry.wearPricePerStart().orElse(0.0),
                                        entry.idleControlPrice().orElse(0.0),
                                        entry.automaticStartPrice().orElse(0.0),
                                        entry.deviceYears().orElse(USUAL_DEVICE_YEARS)))));
    }
}
