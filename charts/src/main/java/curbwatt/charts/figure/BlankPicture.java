package curbwatt.charts.figure;

import curbwatt.charts.style.HouseStyle;
import curbwatt.charts.style.Palette;
import java.util.List;
import java.util.Optional;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.xy.DefaultXYDataset;

/**
 * A picture that shows nothing. Drawing it once loads the typeface and starts what every picture needs, several times the
 * work of any later one: done beside a run, it is over when the run is.
 */
public final class BlankPicture {

    private static final Caption CAPTION = new Caption("Nothing yet", "Drawn and thrown away");
    private static final int HEIGHT = 60;

    private BlankPicture() {}

    /** The picture, one panel with one short line. */
    public static Picture make() {
        NumberAxis across = HouseStyle.across("h");
        NumberAxis upright = HouseStyle.upright("V", Palette.INK.color());
        HouseStyle.ticks(across, 0, 1, 4, "0");
        HouseStyle.ticks(upright, 0, 1, 4, "0");
        XYPlot plot = HouseStyle.plot(across, upright);
        DefaultXYDataset line = new DefaultXYDataset();
        line.addSeries("line", new double[][] {{0, 1}, {0, 1}});
        plot.setDataset(line);
        plot.setRenderer(HouseStyle.line(Palette.INK.color(), HouseStyle.MAIN_LINE));
        List<Head.Key> keys = List.of(new Head.Key("line", Palette.INK.color(), Optional.of(HouseStyle.LEVEL_LINE)));
        return new OnePanel(new Head(CAPTION, keys, OnePanel.WIDTH), 0, HEIGHT, 0)
                .sheet("blank", CAPTION, CAPTION.title(), plot, (pen, panels) -> {});
    }
}
