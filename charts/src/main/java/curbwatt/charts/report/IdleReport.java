package curbwatt.charts.report;

import curbwatt.charts.figure.Caption;
import curbwatt.charts.figure.CurvesFigure;
import curbwatt.charts.figure.OverlayFigure;
import curbwatt.charts.figure.Picture;
import curbwatt.charts.output.IdleJson;
import curbwatt.charts.run.IdleStory;
import curbwatt.charts.run.Trajectory;
import curbwatt.charts.wording.Heading;
import curbwatt.charts.wording.IdleGround;
import curbwatt.charts.wording.IdleText;
import curbwatt.charts.wording.IdleWords;
import curbwatt.engine.study.idle.IdleWay;
import java.util.ArrayList;
import java.util.List;

/** The report on the ways of standing. */
public final class IdleReport {

    private IdleReport() {}

    /** The report. */
    public static StudyReport of(IdleStory story) {
        IdleText text = new IdleText(story);
        IdleGround ground = new IdleGround(story);
        List<Table> tables = new IdleTables(story).all();
        return new StudyReport(
                story.scenario(),
                text.headline(),
                text.keyFigures(),
                pictures(story, text),
                text.reasons(),
                tables,
                ground.doubts(),
                StudyReport.inLongSteps(ground.assumptions()),
                IdleJson.of(story),
                List.of());
    }

    private static List<Picture> pictures(IdleStory story, IdleText text) {
        List<Trajectory> runs = story.trajectories().stream()
                .map(run -> run.named(IdleWords.name(IdleWay.valueOf(run.name()))))
                .toList();
        List<Picture> pictures = new ArrayList<>();
        pictures.add(OverlayFigure.of(runs, caption(text.trajectories())));
        IdleCurves curves = new IdleCurves(story);
        pictures.add(CurvesFigure.of(curves.hours(), caption(text.hours())));
        curves.breakEven().ifPresent(content -> pictures.add(CurvesFigure.of(content, caption(text.breakEven()))));
        return pictures;
    }

    private static Caption caption(Heading heading) {
        return new Caption(heading.title(), heading.subtitle());
    }
}
