package curbwatt.scenarios.assemble;

import curbwatt.engine.study.idle.IdlePlan;
import curbwatt.engine.study.idle.money.Prices;
import curbwatt.engine.study.odds.OddsPlan;
import curbwatt.engine.study.recharge.RechargePlan;
import curbwatt.engine.study.settings.SettingsPlan;
import curbwatt.engine.study.settings.Spread;
import curbwatt.engine.study.size.Candidate;
import curbwatt.engine.study.size.SizePlan;
import curbwatt.scenarios.check.LabelFits;
import curbwatt.scenarios.file.IdleEntry;
import curbwatt.scenarios.file.RechargeEntry;
import curbwatt.scenarios.file.SettingsEntry;
import curbwatt.scenarios.file.SizeEntry;
import curbwatt.scenarios.file.StudiesEntry;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * From checked entries to what each study looks at.
 *
 * @param guarded catches what the engine refuses
 * @param fits fits labels
 */
record StudiesAssembler(Guarded guarded, LabelFits fits) {
    private static final double PERCENT = 100;
    private static final double USUAL_DEVICE_YEARS = 10;

    /** Returns the plans, with the usual for what is left out. */
    StudyPlans plans(StudiesEntry entry) {
        return new StudyPlans(
                entry.settings().map(this::settings).orElseGet(SettingsPlan::usual),
                entry.size().map(this::size).orElseGet(SizePlan::usual),
                entry.size().map(this::labels).orElse(List.of()),
                entry.idle().map(this::idle).orElseGet(IdlePlan::usual),
                entry.odds().map(new OddsAssembler(guarded)::plan).orElseGet(OddsPlan::usual),
                entry.recharge().map(this::recharge).orElseGet(RechargePlan::usual));
    }

    private SettingsPlan settings(SettingsEntry entry) {
        SettingsPlan usual = SettingsPlan.usual();
        Spread spread = usual.spread();
        return guarded.build(
                entry.place(),
                () -> new SettingsPlan(
                        entry.cutoff(),
                        entry.tripLevelsV().isEmpty() ? usual.tripLevelsV() : entry.tripLevelsV(),
                        entry.tripDelaysS().isEmpty() ? usual.tripDelaysS() : entry.tripDelaysS(),
                        entry.recloses().stream().map(CutoffAssembler::reclose).toList(),
                        new Spread(
                                entry.sensorSpreadV().orElse(spread.sensorV()),
                                fraction(entry.timerSpreadPercent(), spread.timerFraction()),
                                fraction(entry.capacityLossPercent(), spread.capacityLossFraction()),
                                fraction(entry.resistanceGrowthPercent(), spread.resistanceGrowthFraction()),
                                entry.airSpreadC().orElse(spread.airK()),
                                fraction(entry.loadSpreadPercent(), spread.loadFraction()))));
    }

    private static double fraction(Optional<Double> percent, double usualFraction) {
        return percent.map(given -> given / PERCENT).orElse(usualFraction);
    }

    private SizePlan size(SizeEntry entry) {
        return guarded.build(entry.place(), () -> SizePlans.of(entry));
    }

    private List<Candidate> labels(SizeEntry entry) {
        return guarded.build(
                entry.place(),
                () -> entry.labels().stream()
                        .map(new CandidateAssembler(fits)::candidate)
                        .toList());
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

    private RechargePlan recharge(RechargeEntry entry) {
        return guarded.build(entry.place(), () -> RechargePlans.of(entry));
    }
}
