package curbwatt.charts.wording;

import curbwatt.charts.run.IdleStory;
import curbwatt.engine.control.AutomaticStart;
import curbwatt.engine.control.HighIdleControl;
import curbwatt.engine.control.IdleTrigger;
import curbwatt.engine.study.idle.IdleDevices;
import curbwatt.engine.study.idle.IdlePlan;
import curbwatt.engine.study.idle.Standing;
import java.util.ArrayList;
import java.util.List;

/**
 * What the study on standing took for granted, and which of its figures not to trust.
 *
 * @param story the study and its runs
 */
public record IdleGround(IdleStory story) {

    /** What was taken for granted, in sentences. */
    public List<String> assumptions() {
        List<String> sentences = new ArrayList<>();
        IdleDevices devices = story.result().devices();
        sentences.add(
                Standing.idles(story.scenario().scene())
                        ? "The idling ways follow the scene; the others have the engine off where the scene has it idle."
                        : "The scene never idles: the idling ways have the engine idle wherever the scene has it off.");
        if (!devices.highIdleIsOwn()) {
            sentences.add(
                    "The vehicle has no idle control; a usual one was taken (our judgement, replace it by yours): "
                            + control(devices.highIdle()));
        }
        if (!devices.automaticStartIsOwn()) {
            sentences.add(
                    "The vehicle has no automatic start; a usual one was taken (our judgement, replace it by yours): "
                            + start(devices.automaticStart()));
        }
        IdlePlan plan = story.result().base().plan();
        if (plan.scenesPerYear() == IdlePlan.USUAL_SCENES_PER_YEAR) {
            sentences.add("A year is taken to have 100 such scenes; give your own with --scenes.");
        }
        if (story.scenario().requirements().isEmpty()) {
            sentences.add(
                    "The scenario asks nothing; every circuit was asked to hold throughout, and the engine to start.");
        }
        if (plan.engineStages().isEmpty()) {
            sentences.add(
                    "Loads of the running engine itself are not known apart (studies.idle.engineStages): what the scene"
                            + " has on stays on with the engine off.");
        }
        sentences.add(
                "Fuel is what standing takes: idling, electricity, and bringing the batteries back afterwards. A restart's"
                        + " own fuel (1.2 mL on one measured car) is left out. CO2 by the European factors of decision 2020/728.");
        return sentences;
    }

    /** Which figures not to trust, in sentences. */
    public List<String> doubts() {
        List<String> sentences = new ArrayList<>();
        if (story.result().base().outcomes().get(0).usage().fuelLitres().isEmpty()) {
            sentences.add(
                    "Nothing says what the engine burns (vehicle.engine): the ways are told apart by engine hours, and"
                            + " there is no fuel, no CO2 and no money.");
        } else if (story.result().base().plan().prices().isEmpty()) {
            sentences.add(
                    "Nothing says what fuel costs (studies.idle.fuelPricePerLitre or --fuel-price): no money is spoken of.");
        }
        sentences.add(
                "A year is so many times this scene: the same weather, the same battery, not yet older. What cycling"
                        + " takes from the battery's life is not in the sums; a way that empties it deeper wears it more.");
        return sentences;
    }

    private static String control(HighIdleControl control) {
        String trigger = control.trigger() instanceof IdleTrigger.BelowVoltage below
                ? "below " + PlainText.volts(below.levelV()) + ", back above " + PlainText.volts(below.recoveredV())
                : "by the battery's current";
        return trigger + ", after " + PlainText.time(control.delayS()) + ", at least "
                + PlainText.time(control.dwellS()) + " long, " + PlainText.number(control.highIdleRpm(), 0) + " /min.";
    }

    private static String start(AutomaticStart device) {
        return "starts after " + PlainText.time(device.delayS()) + " below " + PlainText.volts(device.levelV())
                + ", runs " + PlainText.time(device.longestRunS().orElse(device.minimumRunS())) + " at "
                + PlainText.number(device.idleRpm(), 0) + " /min.";
    }
}
