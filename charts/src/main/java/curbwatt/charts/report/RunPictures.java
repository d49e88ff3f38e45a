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
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** The pictures of a run, titled, the most telling first. */
final class RunPictures {

    private RunPictures() {}

    /** How each is made; empty where a run has nothing to show in it. */
    static List<Supplier<Optional<Picture>>> of(RunStory story) {
        ChartTitle title = new ChartTitle(story);
        return List.of(
                () -> Optional.of(VoltageFigure.of(story, caption(title.voltage()))),
                () -> Optional.of(BalanceFigure.of(story, caption(title.balance()))),
                () -> link(story, title),
                () -> story.waveform().isEmpty() ? Optional.empty() : FlashFigure.of(story, caption(title.flash())),
                () -> story.flashing()
                        .flatMap(flashing -> TimingFigure.of(flashing, caption(new FlashText(flashing).heading()))),
                () -> AlternatorFigure.of(story, caption(title.alternator())));
    }

    private static Optional<Picture> link(RunStory story, ChartTitle title) {
        return story.scenario()
                .vehicle()
                .auxiliary()
                .flatMap(auxiliary -> story.result()
                        .link()
                        .flatMap(link -> LinkFigure.of(story, caption(title.link(auxiliary, link)))));
    }

    /** The words above a picture. */
    static Caption caption(Heading heading) {
        return new Caption(heading.title(), heading.subtitle());
    }
}
