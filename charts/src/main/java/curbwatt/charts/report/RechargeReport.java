package curbwatt.charts.report;

import curbwatt.charts.figure.Caption;
import curbwatt.charts.figure.IdleSpeedFigure;
import curbwatt.charts.figure.Picture;
import curbwatt.charts.figure.RechargeFigure;
import curbwatt.charts.figure.ShiftFigure;
import curbwatt.charts.output.RechargeJson;
import curbwatt.charts.run.RechargeStory;
import curbwatt.charts.wording.Heading;
import curbwatt.charts.wording.PlainText;
import curbwatt.charts.wording.RechargeText;
import curbwatt.charts.wording.RechargeWords;
import curbwatt.charts.wording.ShiftText;
import curbwatt.engine.study.recharge.Missing;
import curbwatt.engine.study.recharge.RechargeResult;
import curbwatt.engine.study.recharge.WayBack;
import java.util.ArrayList;
import java.util.List;

/** The report of what gives the charge back. */
public final class RechargeReport {

    private RechargeReport() {}

    /** Everything that there is to show. */
    public static StudyReport of(RechargeStory story) {
        RechargeText text = new RechargeText(story);
        RechargeResult result = story.result();
        List<Picture> pictures = new ArrayList<>();
        pictures.add(RechargeFigure.of(
                story, result.groups().stream().map(RechargeWords::name).toList(), caption(text.heading())));
        IdleSpeedFigure.of(result, text.shares(), caption(text.speeds())).ifPresent(pictures::add);
        List<StudyReport.CsvTable> csv = new ArrayList<>();
        csv.add(new StudyReport.CsvTable("recharge.csv", "charge over time", RechargeJson.courses(result)));
        boolean pair = story.scenario().vehicle().auxiliary().isPresent();
        result.shifts().ifPresent(answer -> {
            pictures.add(ShiftFigure.of(answer, caption(new ShiftText(answer).heading(pair))));
            csv.add(new StudyReport.CsvTable(
                    "shifts.csv", "charge before each scene", RechargeJson.scenes(answer.outcome())));
        });
        return new StudyReport(
                story.scenario(),
                text.headline(),
                text.figures(),
                pictures,
                text.reasons(),
                List.of(ways(result), batteries(result)),
                doubts(result),
                StudyReport.inLongSteps(assumptions(result)),
                RechargeJson.of(story),
                csv);
    }

    private static Caption caption(Heading heading) {
        return new Caption(heading.title(), heading.subtitle());
    }

    private static Table ways(RechargeResult result) {
        List<List<String>> lines = new ArrayList<>();
        for (WayBack back : result.ways()) {
            lines.add(List.of(
                    RechargeWords.name(back.way()),
                    back.capacityA().isPresent()
                            ? PlainText.number(back.capacityA().getAsDouble(), 0)
                            : "none",
                    PlainText.number(back.meanLoadA(), 0),
                    RechargeWords.time(back.timeS(0.8)),
                    RechargeWords.time(back.timeS(0.9)),
                    RechargeWords.time(back.backS()),
                    back.backS().isPresent()
                            ? ""
                            : PlainText.number(100 * Math.max(0, back.mostFraction()), 1) + " % at most: "
                                    + RechargeWords.limit(back)));
        }
        return Table.of(
                "ways",
                "Each way to recharge",
                "Time until a share of the missing charge is back, each the run of the scene with recharging after it.",
                List.of(
                        "",
                        "#Hot alternator, A",
                        "#Loads left on, A",
                        "#80 % back",
                        "#90 % back",
                        "#All back",
                        "Why not all"),
                lines);
    }

    private static Table batteries(RechargeResult result) {
        List<List<String>> lines = new ArrayList<>();
        for (Missing battery : result.missing()) {
            lines.add(List.of(
                    battery.battery(),
                    PlainText.number(battery.capacityAh(), 1),
                    PlainText.percent(battery.startFraction()),
                    PlainText.percent(battery.endFraction()),
                    PlainText.percent(battery.wantedFraction()),
                    PlainText.number(battery.ah(), 1)));
        }
        return Table.of(
                "batteries",
                "What the scene took",
                "",
                List.of("Battery", "#Capacity, Ah", "#Before", "#After", "#Wanted", "#Missing, Ah"),
                lines);
    }

    private static List<String> assumptions(RechargeResult result) {
        List<String> assumed = new ArrayList<>();
        if (result.leftOutS() > 0) {
            assumed.add("The drive of " + PlainText.time(result.leftOutS())
                    + " that the scene ends with is left out: how long it has to be is what is asked.");
        }
        assumed.add("While recharging " + stages(result) + ", the air stays at " + PlainText.number(result.airC(), 0)
                + " °C, and cutoffs and helpers of the engine act as in the scene; an idle control may raise an idle.");
        assumed.add("Lowest idle speeds are searched from 500 to 2000 /min by halving, to 10 /min, and it is taken for"
                + " granted that a faster idle never gives less.");
        assumed.add("What is not back within a day of recharging counts as never back. A battery counts as full from "
                + PlainText.number(100 * Missing.FULL_FRACTION, 1) + " % on.");
        result.shifts()
                .ifPresent(answer -> assumed.add((answer.fromFile()
                                ? "The shift pattern is the scenario's roster"
                                : "The shift pattern repeats this scene "
                                        + "with a drive after each as studies.recharge says, for four weeks")
                        + ". It keeps up if the engine always starts, no charge sinks, no cutoff acts in its second half, and"
                        + " the scenes of its last repeat begin with " + PlainText.percent(answer.wantedFraction())
                        + " or more. Flashing runs as its mean."));
        return assumed;
    }

    private static String stages(RechargeResult result) {
        return result.stages().isEmpty()
                ? "no stage is on"
                : "the stages " + PlainText.names(result.stages()) + " are on";
    }

    private static List<String> doubts(RechargeResult result) {
        List<String> doubts = new ArrayList<>();
        doubts.add(
                "The last tenth: acceptance near full differs from battery to battery, and falls with age and cold.");
        doubts.add(
                "The lowest idle: near the alternator's cut-in speed its output changes much with a few turns, and its"
                        + " label says nothing there.");
        doubts.add(
                "An engine that idles to charge makes carbon monoxide, and many places forbid or limit idling: ask the"
                        + " local rule first, and prefer a drive or a charger at the depot.");
        if (result.shifts().isPresent()) {
            doubts.add("The shifts: no day is like another, and the battery does not age in the run.");
        }
        return doubts;
    }
}
