package curbwatt.scenarios.check;

import curbwatt.scenarios.file.RechargeEntry;
import curbwatt.scenarios.file.ScenarioFile;

/** What is said about recharging fits together. */
final class RechargeRule implements Rule {

    @Override
    public void look(ScenarioFile file, Findings findings) {
        file.studies().flatMap(studies -> studies.recharge()).ifPresent(recharge -> look(recharge, file, findings));
    }

    private static void look(RechargeEntry recharge, ScenarioFile file, Findings findings) {
        if (findings.isTouched(recharge.place())) {
            return;
        }
        StudiesRule.unknownStages(recharge.stages(), recharge.place().key("stages"), file, findings);
        boolean scenes = recharge.scenesPerDay().isPresent();
        if (scenes != recharge.driveBetweenMin().isPresent()) {
            findings.error(
                    recharge.place(),
                    "studies.recharge has " + (scenes ? "scenesPerDay" : "driveBetweenMin") + " without "
                            + (scenes ? "driveBetweenMin." : "scenesPerDay."),
                    "A day needs both: how many scenes, and how long the drive after each.");
        }
    }
}
