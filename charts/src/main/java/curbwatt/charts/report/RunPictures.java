package curbwatt.charts.report;

import curbwatt.charts.figure.AlternatorFigure;
import curbwatt.charts.figure.BalanceFigure;
import curbwatt.charts.figure.Caption;
import curbwatt.charts.figure.FlashFigure;
import curbwatt.charts.figure.LinkFigure;
import curbwatt.charts.figure.Picture;
import curbwatt.charts.figure.TimingFigure;
import curbwatt.charts.figure.VoltageFigure;
import curbwatt.charts.run.RunStory;
import curbwatt.charts.wording.ChartTitle;
import curbwatt.charts.wording.FlashText;
import curbwatt.charts.wording.Heading;
import java.util.ArrayList;
import java.util.List;

/** The pictures of a run, titled, the most telling first. */
final class RunPictures {

    private RunPictures() {}

    static List<Picture> of(RunStory story) {
        ChartTitle title = new ChartTitle(story);
        List<Picture> pictures = new ArrayList<>();
        pictures.add(VoltageFigure.of(story, caption(title.voltage())));
        pictures.add(BalanceFigure.of(story, caption(title.balance())));
        story.scenario()
                .vehicle()
                .auxiliary()
                .flatMap(auxiliary -> story.result()
                        .link()
                        .flatMap(link -> LinkFigure.of(story, caption(title.link(auxiliary, link)))))
                .ifPresent(pictures::add);
        if (!story.waveform().isEmpty()) {
            FlashFigure.of(story, caption(title.flash())).ifPresent(pictures::add);
        }
        story.flashing()
                .flatMap(flashing -> TimingFigure.of(flashing, caption(new FlashText(flashing).heading())))
                .ifPresent(pictures::add);
        AlternatorFigure.of(story, caption(title.alternator())).ifPresent(pictures::add);
        return List.copyOf(pictures);
    }

    /** The words above a picture. */
    static Caption caption(Heading heading) {
        return new Caption(heading.title(), heading.subtitle());
    }
}
